package org.tidemark.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;

/**
 * Reads text that people will see, and checks that each name in braces is one of the policy's
 * values.
 */
final class Wording {
  private static final Pattern NAME_IN_BRACES = Pattern.compile("\\{([^{}]*)\\}");

  private final Known known;
  private final Problems problems;

  Wording(Known known, Problems problems) {
    this.known = known;
    this.problems = problems;
  }

  Optional<String> optional(Fields fields, String key) {
    return fields.optionalText(key).map(this::checked);
  }

  String required(Fields fields, String key) {
    return checked(fields.text(key));
  }

  List<String> list(Fields fields, String key) {
    List<String> all = new ArrayList<>();
    fields.texts(key).forEach(t -> all.add(checked(t)));
    return List.copyOf(all);
  }

  String checked(Located<String> text) {
    Matcher names = NAME_IN_BRACES.matcher(text.value());
    while (names.find()) {
      String name = names.group(1);
      if (known.value(name).isEmpty()) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.UNKNOWN_VALUE,
                    text.span(),
                    name.isBlank()
                        ? "the braces {" + name + "} hold no name"
                        : "no value is called `"
                            + name
                            + "`, so {"
                            + name
                            + "} cannot be filled in")
                .help(Fields.suggest(name, known.valueNames())));
      }
    }
    return text.value();
  }
}
