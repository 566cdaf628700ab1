package org.tidemark;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Reason;
import org.tidemark.guide.QueryReading;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Domain;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Rule;
import org.tidemark.model.Seen;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;

/**
 * What a policy says at a pH that somebody typed: whether the reading counts, and what to do if
 * not. It speaks of the reading alone and never answers whether the tube may be used.
 */
final class AtThisNumber {
  private static final String PH = "ph";
  private static final String READERS = "ph-readers";
  private static final String QUESTION = "use";
  private static final String MORE =
      "It is one condition of several: answer the whole check before anything goes down.";

  /** A good sample from a tube that is in, before a use; the reading itself is what is asked. */
  private static final Map<String, Set<String>> SAMPLE =
      Map.of(
          "tube-state", Set.of("in"),
          "occasion", Set.of("first-use", "later-use"),
          "aspirate", Set.of("obtained"),
          "strip", Set.of("gastric"));

  /** How far a reading counts, the most cautious last. */
  private enum Counts {
    ALONE,
    WITH_A_SECOND_READER,
    NOT
  }

  private final EffectivePolicy policy;
  private final Lazy<Optional<Decider>> decider;

  AtThisNumber(EffectivePolicy policy) {
    this.policy = policy;
    this.decider = new Lazy<>(this::bedside);
  }

  private Optional<Decider> bedside() {
    boolean known =
        Stream.concat(Stream.of(PH, READERS), SAMPLE.keySet().stream())
            .allMatch(name -> policy.vocabulary().finding(name).isPresent());
    return known && policy.value("ph-cut-off").isPresent()
        ? Bedside.decider(policy, QUESTION)
            .match(answers -> Decider.ofWhatIsSo(policy, QUESTION), refused -> Optional.empty())
        : Optional.empty();
  }

  /** Empty for another unit, and when the policy answers nobody or states no limit. */
  Optional<String> says(QueryReading.Measured number) {
    Optional<Domain.Measure> strip = strip();
    return number.unit().equals(PH) && strip.isPresent() && decider.get().isPresent()
        ? Optional.of(says(number.value(), strip.get()))
        : Optional.empty();
  }

  private Optional<Domain.Measure> strip() {
    return policy
        .vocabulary()
        .finding(PH)
        .map(Finding::domain)
        .filter(Domain.Measure.class::isInstance)
        .map(Domain.Measure.class::cast);
  }

  private String says(BigDecimal ph, Domain.Measure strip) {
    if (!strip.inRange(ph)) {
      return "No strip shows pH %s: it shows %s to %s. Test a new sample with a new strip."
          .formatted(ph.toPlainString(), strip.print(strip.lowest()), strip.print(strip.highest()));
    }
    if (strip.onStep(ph)) {
      return said("At pH " + strip.print(ph), mayBe(ph, ph, strip));
    }
    BigDecimal below =
        strip.number(ph.divide(strip.step(), 0, RoundingMode.FLOOR).longValueExact());
    BigDecimal above = below.add(strip.step());
    String ends = strip.print(below) + " and " + strip.print(above);
    return "The strip is read in steps of %s, so it does not show pH %s. "
            .formatted(strip.step().toPlainString(), ph.toPlainString())
        + said("For a colour between " + ends, mayBe(below, above, strip));
  }

  /** A reading that may be off counts as all that it may be. */
  private List<BigDecimal> mayBe(BigDecimal low, BigDecimal high, Domain.Measure strip) {
    BigDecimal off = policy.howFarOff(PH).orElse(BigDecimal.ZERO);
    List<BigDecimal> all = new ArrayList<>();
    BigDecimal last = high.add(off).min(strip.highest());
    for (BigDecimal ph = low.subtract(off).max(strip.lowest());
        ph.compareTo(last) <= 0;
        ph = ph.add(strip.step())) {
      all.add(ph);
    }
    return all;
  }

  /** Of several possible readings the most cautious answer holds. */
  private String said(String lead, List<BigDecimal> possible) {
    BigDecimal worst = possible.get(0);
    for (BigDecimal ph : possible) {
      worst = counts(ph).compareTo(counts(worst)) > 0 ? ph : worst;
    }
    Counts counts = counts(worst);
    List<String> sentences = new ArrayList<>();
    sentences.add(
        lead + ", this policy (" + policy.header().title() + ") " + verdict(counts) + ".");
    policy.howFarOff().stream()
        .filter(far -> far.finding().name().equals(PH))
        .forEach(far -> sentences.add(far.mayBeOff()));
    sentences.addAll(words(worst, counts));
    if (counts != Counts.NOT) {
      sentences.add(MORE);
    }
    return String.join(" ", sentences);
  }

  private static String verdict(Counts counts) {
    return switch (counts) {
      case ALONE -> "lets the reading count";
      case WITH_A_SECOND_READER -> "lets the reading count only with a second reader";
      case NOT -> "does not let the reading count";
    };
  }

  private Counts counts(BigDecimal ph) {
    if (allowed(ph, "one")) {
      return Counts.ALONE;
    }
    return allowed(ph, "two-agree") ? Counts.WITH_A_SECOND_READER : Counts.NOT;
  }

  private boolean allowed(BigDecimal ph, String readers) {
    return reasons(ph, readers).stream().anyMatch(r -> r.effect() == Effect.ALLOW && !r.setAside());
  }

  /** The policy's own sentences: why not, and what to do. */
  private Set<String> words(BigDecimal ph, Counts counts) {
    Set<String> words = new LinkedHashSet<>();
    if (counts != Counts.ALONE) {
      reasons(ph, "one").stream()
          .filter(reason -> reason.effect() != Effect.ALLOW)
          .flatMap(this::words)
          .forEach(words::add);
    }
    return words;
  }

  /** Why and what next; for the steps that follow a bad reading, the steps alone. */
  private Stream<String> words(Reason reason) {
    Optional<Rule> rule = policy.question(QUESTION).flatMap(q -> q.rule(reason.rule()));
    Stream<String> words =
        rule.isPresent()
            ? Stream.concat(reason.because().stream(), rule.get().says().next().stream())
            : policy.care().fallbacks().stream()
                .filter(steps -> steps.name().equals(reason.rule()))
                .flatMap(steps -> steps.steps().stream())
                .map(step -> step.alternatives().get(0).says());
    return words.map(policy::fill);
  }

  private List<Reason> reasons(BigDecimal ph, String readers) {
    return decider
        .get()
        .map(d -> d.decide(findings(ph, readers), LocalDate.EPOCH).reasons())
        .orElse(List.of());
  }

  private static Findings findings(BigDecimal ph, String readers) {
    Place typed = Place.at(SourceText.of("query", "").beginning());
    Findings findings = Findings.NONE;
    for (Map.Entry<String, Set<String>> one : SAMPLE.entrySet()) {
      findings =
          findings.with(one.getKey(), new Findings.Entry(Seen.options(one.getValue()), typed));
    }
    return findings
        .with(READERS, new Findings.Entry(Seen.option(readers), typed))
        .with(PH, new Findings.Entry(Seen.number(ph), typed));
  }
}
