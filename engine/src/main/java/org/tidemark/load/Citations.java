package org.tidemark.load;

import java.util.ArrayList;
import java.util.List;
import org.tidemark.model.Bibliography;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;

/** Looks every citation up in the bibliography. */
final class Citations {
  private final Bibliography bibliography;
  private final Problems problems;

  Citations(Bibliography bibliography, Problems problems) {
    this.bibliography = bibliography;
    this.problems = problems;
  }

  List<String> read(Fields fields, String key) {
    List<String> ids = new ArrayList<>();
    for (Located<String> id : fields.texts(key)) {
      if (bibliography.entry(id.value()).isEmpty()) {
        List<String> may = bibliography.entries().stream().map(Bibliography.Entry::id).toList();
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.UNKNOWN_CITATION,
                    id.span(),
                    "the bibliography has no `" + id.value() + "`")
                .help(
                    org.tidemark.source.Suggestion.nearest(id.value(), may)
                        .map(near -> "did you mean `" + near + "`?")
                        .orElse(
                            "add the publication to the bibliography, or cite one that is there")));
      }
      ids.add(id.value());
    }
    return List.copyOf(ids);
  }
}
