package org.tidemark.report;

import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Names as DMN's expression language can read them. A policy's own names begin with a small letter,
 * so that the names made here, which begin with a capital, are never taken for one of them.
 */
final class DmnNames {
  /** Words of the language, which cannot name anything, and of its functions, which must not. */
  private static final Set<String> TAKEN =
      Set.of(
          ("and or not in if then else for return some every satisfies between instance of function"
                  + " external true false null item list context range date time duration number"
                  + " string boolean any all count min max sum mean median stddev mode product"
                  + " substring contains matches split replace append concatenate remove reverse"
                  + " union flatten sublist sort decimal floor ceiling abs modulo sqrt log exp odd"
                  + " even is before after meets during overlaps starts finishes includes coincides"
                  + " now today years months days")
              .split(" "));

  private DmnNames() {}

  /** The variable of a finding: of its word, or, for a measure, of its number. */
  static String variable(String finding) {
    String name = finding.replace('-', '_');
    return TAKEN.contains(name) ? name + "_" : name;
  }

  /** The variable that says whether a measure was measured, or what stands in its place. */
  static String found(String finding) {
    return "Found_" + finding.replace('-', '_');
  }

  static String decision(String what, String question) {
    return what + "_" + question.replace('-', '_');
  }

  static String type(String variable) {
    return "T_" + variable;
  }

  static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  static String quoted(Collection<String> texts) {
    return texts.stream().map(DmnNames::quoted).collect(Collectors.joining(", "));
  }
}
