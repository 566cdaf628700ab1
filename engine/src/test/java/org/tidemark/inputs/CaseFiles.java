package org.tidemark.inputs;

import java.util.List;
import org.tidemark.testkit.InputCase;

/** The case files beside the tests. */
final class CaseFiles {
  static final List<String> NAMES =
      List.of(
          "words.txt",
          "numbers.txt",
          "quotes.txt",
          "characters.txt",
          "structure.txt",
          "fields.txt",
          "names.txt",
          "limits.txt",
          "rules.txt",
          "lapses.txt",
          "statements.txt",
          "departures.txt",
          "constructs.txt",
          "vocabularies.txt",
          "findings.txt",
          "records.txt",
          "layers.txt",
          "wholes.txt",
          "texts.txt",
          "control.txt",
          "accepted.txt",
          "groups.txt",
          "contacts.txt",
          "how-far-off.txt",
          "never.txt");

  private CaseFiles() {}

  static List<InputCase> cases(String name) {
    List<InputCase> cases = InputCase.parse(Bench.resource(name));
    if (cases.isEmpty()) {
      throw new IllegalArgumentException(name + " holds no case");
    }
    return cases;
  }

  static List<InputCase> all() {
    return NAMES.stream().flatMap(name -> cases(name).stream()).toList();
  }
}
