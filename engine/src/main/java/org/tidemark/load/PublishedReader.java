package org.tidemark.load;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.PublishedLimits;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlNode;

/** Reads which limits of a measure were read in publications. */
final class PublishedReader {
  private final Finding finding;
  private final Problems problems;

  PublishedReader(Finding finding, Problems problems) {
    this.finding = finding;
    this.problems = problems;
  }

  Optional<PublishedLimits> read(Fields fields) {
    Optional<YamlNode> node = fields.optional("published-limits");
    if (node.isEmpty()) {
      return Optional.empty();
    }
    Fields limits = Fields.of(node.get(), "`published-limits`", problems);
    Optional<BigDecimal> low = limits.requiredText("at-least").flatMap(this::limit);
    Optional<BigDecimal> high = limits.requiredText("at-most").flatMap(this::limit);
    List<String> sources = limits.someTexts("source").stream().map(Located::value).toList();
    limits.done();
    if (!(finding.domain() instanceof Domain.Measure)) {
      wrong(DiagnosticCode.WRONG_SHAPE, limits, "only a measure has limits", "delete them");
    }
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    if (low.get().compareTo(high.get()) > 0) {
      wrong(
          DiagnosticCode.REVERSED,
          limits,
          "the lower end lies above the upper end",
          "write the lower number in at-least");
    }
    return Optional.of(new PublishedLimits(low.get(), high.get(), sources));
  }

  private Optional<BigDecimal> limit(Located<String> text) {
    return finding.domain() instanceof Domain.Measure measure
        ? Measures.reading(text, finding, measure, problems)
        : Optional.empty();
  }

  private void wrong(DiagnosticCode code, Fields at, String what, String help) {
    problems.add(Diagnostic.error(code, at.span(), what).help(help));
  }
}
