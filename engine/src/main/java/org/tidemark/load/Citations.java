package org.tidemark.load;

import java.util.List;
import java.util.Optional;
import org.tidemark.model.Bibliography;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Suggestion;

/** Looks every citation up in the bibliography, unless that was done before. */
final class Citations {
  private final Optional<Bibliography> bibliography;
  private final Problems problems;

  Citations(Optional<Bibliography> bibliography, Problems problems) {
    this.bibliography = bibliography;
    this.problems = problems;
  }

  List<String> read(Fields fields, String key) {
    List<Located<String>> ids = fields.texts(key);
    bibliography.ifPresent(known -> ids.forEach(id -> lookUp(id, known)));
    return ids.stream().map(Located::value).toList();
  }

  private void lookUp(Located<String> id, Bibliography known) {
    if (known.entry(id.value()).isEmpty()) {
      List<String> may = known.entries().stream().map(Bibliography.Entry::id).toList();
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_CITATION,
                  id.span(),
                  "the bibliography has no `" + id.value() + "`")
              .help(
                  Suggestion.nearest(id.value(), may)
                      .map(near -> "did you mean `" + near + "`?")
                      .orElse(
                          "add the publication to the bibliography, or cite one that is there")));
    }
  }
}
