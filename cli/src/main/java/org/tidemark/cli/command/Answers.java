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

/** What is typed at a terminal as the answer to one finding's question. */
final class Answers {
  private final Finding finding;

  Answers(Finding finding) {
    this.finding = finding;
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
