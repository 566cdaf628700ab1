package org.tidemark.trial;

import java.util.List;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Condition;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Option;
import org.tidemark.model.Seen;
import org.tidemark.model.UsualAnswers;
import org.tidemark.model.Value;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Place;

/** Makes a whole case of a few findings: what they hang on is so, and the rest is as usual. */
final class UsualCase {
  private final Vocabulary vocabulary;
  private final UsualAnswers usual;
  private final Completed completed;

  UsualCase(EffectivePolicy policy, UsualAnswers usual) {
    this.vocabulary = policy.vocabulary();
    this.usual = usual;
    this.completed = new Completed(vocabulary, usual);
  }

  Findings of(Findings entered, Place place) {
    Findings whole = entered;
    for (String name : List.copyOf(entered.entries().keySet())) {
      whole = withParents(whole, vocabulary.require(name));
    }
    return completed.fill(whole, place);
  }

  private Findings withParents(Findings entered, Finding finding) {
    Findings more = entered;
    for (Condition.Options parent : finding.applies()) {
      if (more.entry(parent.finding()).isEmpty()) {
        more = with(more, vocabulary.require(parent.finding()), holds(parent));
      }
      more = withParents(more, vocabulary.require(parent.finding()));
    }
    return more;
  }

  /** Of the options for which a condition holds the usual one, or else the first. */
  Seen holds(Condition.Options condition) {
    return usual
        .of(condition.finding())
        .filter(v -> v instanceof Value.Word word && condition.options().contains(word.name()))
        .map(v -> Seen.option(((Value.Word) v).name()))
        .orElseGet(() -> first(condition));
  }

  private Seen first(Condition.Options condition) {
    return vocabulary.require(condition.finding()).domain().options().stream()
        .map(Option::name)
        .filter(condition.options()::contains)
        .findFirst()
        .map(Seen::option)
        .orElseThrow();
  }

  static Findings with(Findings findings, Finding finding, Seen seen) {
    return findings.with(finding.name(), new Findings.Entry(seen, finding.place()));
  }

  static Findings with(Findings findings, Findings more) {
    Findings both = findings;
    for (var entry : more.entries().entrySet()) {
      both = both.with(entry.getKey(), entry.getValue());
    }
    return both;
  }
}
