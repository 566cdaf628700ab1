package org.tidemark.print;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Band;
import org.tidemark.model.Bound;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Option;
import org.tidemark.model.Value;

/** Says a condition in words: the findings by their names, the options as a nurse reads them. */
final class GivenWords implements Condition.Visitor<String> {
  private final EffectivePolicy policy;

  GivenWords(EffectivePolicy policy) {
    this.policy = policy;
  }

  String of(Condition condition) {
    return condition.accept(this);
  }

  @Override
  public String allOf(Condition.AllOf all) {
    return all.parts().isEmpty()
        ? "always"
        : all.parts().stream().map(this::of).collect(Collectors.joining("; "));
  }

  @Override
  public String anyOf(Condition.AnyOf any) {
    return any.alternatives().stream()
        .map(this::of)
        .collect(Collectors.joining(", or ", "any of (", ")"));
  }

  @Override
  public String someOf(Condition.SomeOf some) {
    return some.parts().stream()
        .map(this::of)
        .collect(Collectors.joining(", or ", "at least " + some.howMany() + " of (", ")"));
  }

  @Override
  public String options(Condition.Options options) {
    return name(options.finding()) + ": " + labels(options.finding(), options.options());
  }

  @Override
  public String otherThan(Condition.OtherThan other) {
    String excluded =
        other.excluded() instanceof Value.Word word
            ? labels(other.finding(), Set.of(word.name()))
            : other.excluded().toString();
    return name(other.finding()) + ": recorded, and not " + excluded;
  }

  @Override
  public String inBand(Condition.InBand in) {
    return name(in.finding()) + ": " + band(in.finding(), in.band());
  }

  @Override
  public String inNamedBand(Condition.InNamedBand in) {
    return policy
        .band(in.band())
        .map(NamedBand::band)
        .map(b -> name(in.finding()) + ": " + band(in.finding(), b))
        .orElseGet(() -> name(in.finding()) + ": " + in.band());
  }

  @Override
  public String termIs(Condition.TermIs term) {
    return term.term().replace('-', ' ') + ": " + (term.holds() ? "yes" : "no");
  }

  private static String name(String finding) {
    return finding.replace('-', ' ');
  }

  private String labels(String name, Set<String> options) {
    return policy.vocabulary().require(name).domain().options().stream()
        .filter(o -> options.contains(o.name()))
        .map(Option::label)
        .collect(Collectors.joining(" or "));
  }

  private String band(String name, Band band) {
    Finding finding = policy.vocabulary().require(name);
    String unit =
        finding.domain() instanceof Domain.Measure m && !m.unit().equalsIgnoreCase(name)
            ? " " + m.unit()
            : "";
    String low = band.lower().map(b -> end(b, "or more", "above ", finding)).orElse("");
    String high = band.upper().map(b -> end(b, "or less", "below ", finding)).orElse("");
    List<String> ends = List.of(low, high).stream().filter(e -> !e.isEmpty()).toList();
    return String.join(", and ", ends) + unit;
  }

  private String end(Bound bound, String after, String before, Finding finding) {
    String number =
        policy
            .number(bound.limit())
            .map(n -> finding.domain() instanceof Domain.Measure m ? m.print(n) : n.toString())
            .orElse("a number that is not stated");
    return bound.inclusive() ? number + " " + after : before + number;
  }
}
