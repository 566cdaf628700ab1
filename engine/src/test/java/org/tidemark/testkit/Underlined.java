package org.tidemark.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Span;

/**
 * What a reading is expected to say: exactly so many diagnostics, each with its code, its line and
 * column, the text that is underlined, and a part of its message and of its help. Written as
 *
 * <pre>
 * error decimal-comma 3:7 «5,5»
 *   says: has a comma
 *   help: write 5.5
 *   also 1:3 «max»
 * </pre>
 *
 * and {@code nothing} for none at all. A place in another text has the name of that text before its
 * line: {@code also floor.yaml 12:3 «max»}.
 *
 * @param first the severity, the code, the place and the underlined text
 * @param says a part of the message
 * @param help a part of the help
 * @param also other places that it names
 */
public record Underlined(String first, String says, String help, List<String> also) {
  public Underlined {
    also = List.copyOf(also);
  }

  /**
   * Reads expectations.
   *
   * @param text as described above
   * @param firstLine the line of the source that the expectations call line 1
   */
  public static List<Underlined> parse(String text, int firstLine) {
    List<Underlined> all = new ArrayList<>();
    String first = "";
    String says = "";
    String help = "";
    List<String> also = new ArrayList<>();
    for (String line : (text.strip() + "\nend").lines().toList()) {
      if (line.startsWith("  says: ")) {
        says = line.substring(8);
      } else if (line.startsWith("  help: ")) {
        help = line.substring(8);
      } else if (line.startsWith("  also ")) {
        also.add(inAnotherText(line) ? line.strip() : shifted(line.strip(), firstLine));
      } else if (!line.isBlank()) {
        if (!first.isEmpty() && !first.equals("nothing")) {
          all.add(new Underlined(shifted(first, firstLine), says, help, also));
        }
        first = line;
        says = "";
        help = "";
        also.clear();
      }
    }
    return all;
  }

  private static boolean inAnotherText(String line) {
    return !line.matches("  also -?[0-9].*");
  }

  private static String shifted(String line, int firstLine) {
    int colon = line.indexOf(':');
    int space = line.lastIndexOf(' ', colon);
    int number = Integer.parseInt(line.substring(space + 1, colon));
    return line.substring(0, space + 1) + (number + firstLine - 1) + line.substring(colon);
  }

  /** Fails unless exactly these were said. */
  public static void assertSaid(List<Underlined> expected, List<Diagnostic> said) {
    List<String> shown = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      Diagnostic d = said.get(i);
      shown.add(
          i < expected.size() && expected.get(i).matches(d) ? expected.get(i).toString() : full(d));
    }
    assertEquals(
        expected.stream().map(Underlined::toString).collect(Collectors.joining("\n")),
        String.join("\n", shown));
  }

  private boolean matches(Diagnostic d) {
    boolean helped = d.help().map(h -> !help.isEmpty() && h.contains(help)).orElse(help.isEmpty());
    return first(d).equals(first)
        && !says.isEmpty()
        && d.message().contains(says)
        && helped
        && related(d).equals(also);
  }

  private static List<String> related(Diagnostic d) {
    return d.related().stream().map(r -> "also " + name(r.at(), d.at()) + place(r.at())).toList();
  }

  private static String name(Span there, Span here) {
    return there.source().equals(here.source()) ? "" : there.source().name() + " ";
  }

  /** A diagnostic in full, in the same form. */
  public static String full(Diagnostic d) {
    return new Underlined(first(d), d.message(), d.help().orElse(""), related(d)).toString();
  }

  private static String first(Diagnostic d) {
    return d.severity().name().toLowerCase(Locale.ROOT) + " " + d.code().id() + " " + place(d.at());
  }

  private static String place(Span at) {
    return at.line() + ":" + at.column() + " \u00AB" + Marked.write(at.text()) + "\u00BB";
  }

  @Override
  public String toString() {
    StringBuilder out = new StringBuilder(first).append('\n');
    out.append("  says: ").append(says).append('\n');
    out.append(help.isEmpty() ? "" : "  help: " + help + "\n");
    also.forEach(a -> out.append("  ").append(a).append('\n'));
    return out.toString();
  }
}
