package org.tidemark.load;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.model.PolicyKind;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlText;

/**
 * Finds values, bands, terms, contacts and findings of its own that a policy names and nothing in
 * it uses: an author who changes such a number changes nothing, and an answer to such a finding is
 * lost. What a floor names may be for the layers above it.
 */
final class UnusedNames {
  private static final List<String> KINDS =
      List.of("values", "bands", "terms", "contacts", "own-findings");
  private static final Pattern IN_BRACES = Pattern.compile("\\{([^{}]*)\\}");

  private final PolicyKind kind;
  private final Set<String> below;
  private final Problems problems;
  private final Set<String> used = new HashSet<>();

  UnusedNames(PolicyKind kind, Set<String> below, Problems problems) {
    this.kind = kind;
    this.below = below;
    this.problems = problems;
  }

  void check(Fields policy) {
    if (!kind.servesBedside() || problems.anyError()) {
      return; // what is broken may be what would use it
    }
    for (YamlMap.Entry part : policy.seen()) {
      boolean names = KINDS.contains(part.key().text());
      if (names && part.value() instanceof YamlMap named) {
        named.entries().forEach(e -> look(e.value()));
      } else {
        look(part.value());
      }
    }
    for (YamlMap.Entry part : policy.seen()) {
      if (KINDS.contains(part.key().text()) && part.value() instanceof YamlMap named) {
        named.entries().stream()
            .filter(e -> !saysWhatIsOpen(e.value()) && !saysHowFarOff(e.value()))
            .forEach(e -> report(part.key().text(), e.key()));
      }
    }
  }

  /** A band of which the source is silent is there to say so. */
  private static boolean saysWhatIsOpen(YamlNode node) {
    return node instanceof YamlMap map && map.entry("not-stated").isPresent();
  }

  /** How far a reading may be off acts on every answer, without being named again. */
  private static boolean saysHowFarOff(YamlNode node) {
    return node instanceof YamlMap map && map.entry("how-far-off").isPresent();
  }

  private void look(YamlNode node) {
    if (node instanceof YamlMap map) {
      map.entries().forEach(e -> used.add(e.key().text()));
      map.entries().forEach(e -> look(e.value()));
    } else if (node instanceof YamlList list) {
      list.items().forEach(this::look);
    } else if (node instanceof YamlText text) {
      used.add(text.text().strip());
      Matcher braces = IN_BRACES.matcher(text.text());
      while (braces.find()) {
        used.add(braces.group(1));
      }
    }
  }

  private void report(String part, YamlText name) {
    if (!used.contains(name.text()) && !below.contains(name.text())) {
      problems.add(
          Diagnostic.warning(
                  DiagnosticCode.UNUSED,
                  name.span(),
                  "`" + name.text() + "` stands under `" + part + "` and nothing uses it")
              .help("use it where it is meant, or delete it"));
    }
  }
}
