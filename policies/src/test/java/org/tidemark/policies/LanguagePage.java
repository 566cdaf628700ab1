package org.tidemark.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.tidemark.load.Holds;
import org.tidemark.load.Part;

/** The page about the language: its examples, and its tables as they should be. */
final class LanguagePage {
  private static final Pattern EXAMPLE =
      Pattern.compile("```yaml\n(.*?)```\n\n```text\n(.*?)```\n", Pattern.DOTALL);
  private static final Pattern TABLE =
      Pattern.compile("<!-- table: (.*?) -->\n.*?<!-- end -->\n", Pattern.DOTALL);

  private final String text;

  LanguagePage(String text) {
    this.text = text;
  }

  /**
   * An example.
   *
   * @param yaml what stands in the place of fields of the whole policy
   * @param expected what comes of it, one a line
   * @param line where it begins
   */
  record Example(String yaml, List<String> expected, int line) {
    /** Whether it is a file of its own, on the first example. */
    boolean isALayer() {
      return yaml.contains("builds-on: our-ward-adult");
    }

    @Override
    public String toString() {
      return "line " + line;
    }
  }

  List<Example> examples() {
    List<Example> all = new ArrayList<>();
    Matcher m = EXAMPLE.matcher(text);
    while (m.find()) {
      int line = (int) text.substring(0, m.start()).lines().count() + 1;
      all.add(new Example(m.group(1), m.group(2).lines().toList(), line));
    }
    return all;
  }

  /** The first example, which others lie on. */
  String first() {
    return examples().get(0).yaml();
  }

  /** The first example with the fields of another in the place of its own. */
  String whole(Example example) {
    if (example.isALayer()) {
      return example.yaml();
    }
    return Snippets.over(first(), example.yaml());
  }

  List<String> tables() {
    return TABLE.matcher(text).results().map(r -> r.group(1)).toList();
  }

  /** The page with every table as the language is declared. */
  String withTables(Map<String, Part> parts) {
    return TABLE
        .matcher(text)
        .replaceAll(
            r -> {
              Part part = parts.get(r.group(1));
              String table = part == null ? "" : table(part);
              return Matcher.quoteReplacement(
                  "<!-- table: " + r.group(1) + " -->\n" + table + "<!-- end -->\n");
            });
  }

  private static String table(Part part) {
    String rows =
        part.fields().stream()
            .map(
                f ->
                    "| `%s` | %s | %s | %s |\n"
                        .formatted(f.name(), need(f.need()), holds(f.holds()), f.says()))
            .collect(Collectors.joining());
    return "\n| in %s | needed | holds | what for |\n|---|---|---|---|\n".formatted(part.called())
        + rows
        + "\n";
  }

  private static String need(Part.Need need) {
    return switch (need) {
      case ALWAYS -> "yes";
      case MAYBE -> "";
      case DEPENDS -> "it depends";
    };
  }

  private static String holds(Holds holds) {
    if (holds instanceof Holds.Word word) {
      return String.join(", ", word.words());
    } else if (holds instanceof Holds.Words words) {
      return "any of: " + String.join(", ", words.words());
    } else if (holds instanceof Holds.Group group) {
      return "fields: " + group.part().called();
    } else if (holds instanceof Holds.ListOf list) {
      return "a list of " + holds(list.item());
    } else if (holds instanceof Holds.Named named) {
      return "named " + holds(named.each());
    } else if (holds instanceof Holds.Either either) {
      return either.those().stream().map(LanguagePage::holds).collect(Collectors.joining(", or "));
    }
    return plain((Holds.Plain) holds);
  }

  private static String plain(Holds.Plain plain) {
    return switch (plain) {
      case TEXT -> "text";
      case TEXTS -> "texts";
      case SOME_TEXTS -> "one text or more";
      case NAME -> "a name";
      case NUMBER -> "a number";
      case COUNT -> "a whole number";
      case DAY -> "a day";
      case TIME -> "a time of day";
      case MOMENT -> "a day and a time";
      case LIMIT -> "a number, a value's name, or not-stated";
      case GIVEN -> "a condition";
      case GIVEN_OF_ITEM -> "a condition on an item's fields";
      case ALTERNATIVES -> "a list of conditions";
      case SCOPE -> "findings with their options";
      case FINDINGS -> "findings";
      case FOUND -> "what was found";
      case RECORD -> "the lists of a record";
    };
  }
}
