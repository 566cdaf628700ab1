package org.tidemark.cli.command;

import java.util.List;
import java.util.Optional;
import org.tidemark.load.FindingsLoader;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Option;
import org.tidemark.model.Seen;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;

/** One finding as a question at a terminal, and what is typed as its answer. */
final class Answers {
  private final Finding finding;

  Answers(Finding finding) {
    this.finding = finding;
  }

  String question() {
    StringBuilder text = new StringBuilder(finding.asks()).append('\n');
    List<Option> options = finding.domain().options();
    if (finding.domain() instanceof Domain.Measure measure) {
      text.append("  ").append(reading(measure)).append('\n');
      options.forEach(
          o -> text.append("  or ").append(o.name()).append(" (").append(o.label()).append(")\n"));
      return text.toString();
    }
    for (int i = 0; i < options.size(); i++) {
      text.append("  ").append(i + 1).append("  ").append(options.get(i).label()).append('\n');
    }
    return text.toString();
  }

  private static String reading(Domain.Measure measure) {
    return "a number in "
        + measure.unit()
        + ", "
        + measure.lowest().toPlainString()
        + " to "
        + measure.highest().toPlainString()
        + " in steps of "
        + measure.step().toPlainString();
  }

  /** What helps to answer. */
  String explanation() {
    StringBuilder text = new StringBuilder();
    finding.how().ifPresent(how -> text.append("  ").append(how).append('\n'));
    finding.renew().ifPresent(renew -> text.append("  To find out: ").append(renew).append('\n'));
    text.append("  It is asked because it can still change the answer.\n");
    return text.toString();
  }

  /** What was typed: an option's number, name or label, or a reading. */
  Loaded<Findings.Entry> read(String typed) {
    String meant = option(typed).map(Option::name).orElse(typed);
    SourceText text = SourceText.of(finding.name(), meant);
    Span span = new Span(text, 0, meant.length());
    Loaded<Seen> seen = FindingsLoader.entered(Located.of(meant, span), finding);
    return seen.match(s -> Loaded.good(new Findings.Entry(s, Place.at(span))), Loaded::broken);
  }

  private Optional<Option> option(String typed) {
    List<Option> options = finding.domain().options();
    for (int i = 0; i < options.size(); i++) {
      boolean numbered =
          finding.domain() instanceof Domain.Choice && typed.equals(Integer.toString(i + 1));
      if (numbered || typed.equalsIgnoreCase(options.get(i).label())) {
        return Optional.of(options.get(i));
      }
    }
    return Optional.empty();
  }
}
