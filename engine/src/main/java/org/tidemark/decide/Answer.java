package org.tidemark.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Barred;
import org.tidemark.model.Contact;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Option;
import org.tidemark.model.Outcome;

/**
 * Puts an answer into words: reasons, what does not count, what to do, whom to call, what to bear
 * in mind.
 */
final class Answer {
  /** The most cautious first. */
  private static final List<Effect> ORDER =
      List.of(Effect.ESCALATE, Effect.HOLD, Effect.NOT_YET, Effect.SET_ASIDE, Effect.ALLOW);

  private final CompiledQuestion compiled;
  private final Wording wording;
  private final Findings findings;
  private final long[] region;
  private final Firing firing;
  private final List<CompiledRule> fired;

  /**
   * An answer to be put.
   *
   * @param compiled the question
   * @param wording what its rules say
   * @param findings what is known
   * @param region the cases that this leaves open
   * @param firing the rules that fire in all of them
   */
  Answer(
      CompiledQuestion compiled, Wording wording, Findings findings, long[] region, Firing firing) {
    this.compiled = compiled;
    this.wording = wording;
    this.findings = findings;
    this.region = region;
    this.firing = firing;
    this.fired = inOrder(firing.rules());
  }

  private static List<CompiledRule> inOrder(List<CompiledRule> rules) {
    if (rules.size() < 2) {
      return rules;
    }
    List<CompiledRule> ordered = new ArrayList<>(rules.size());
    for (Effect effect : ORDER) {
      for (CompiledRule rule : rules) {
        if (rule.has(effect)) {
          ordered.add(rule);
        }
      }
    }
    return ordered;
  }

  Decision put(
      Outcome outcome,
      Kind kind,
      Set<Outcome> possible,
      List<Need> ask,
      List<CountsAs> countsAs,
      LocalDate today) {
    List<CompiledRule> speaking = speaking(outcome, kind);
    return new Decision(
        compiled.question().name(),
        compiled.question().asks(),
        outcome,
        compiled.question().word(outcome),
        kind,
        possible,
        reasons(),
        doesNotCount(),
        countsAs,
        ask,
        List.copyOf(next(speaking, outcome, kind)),
        List.copyOf(call(speaking)),
        wording.writeDown(),
        List.copyOf(cautions(outcome, today)),
        wording.stamp());
  }

  /**
   * The rules whose words belong to this answer: what blocks it, and when nothing blocks, what
   * keeps it from being allowed.
   */
  private List<CompiledRule> speaking(Outcome outcome, Kind kind) {
    if (outcome == Outcome.PROCEED) {
      return List.of();
    }
    List<CompiledRule> speaking = new ArrayList<>(fired.size());
    for (CompiledRule rule : fired) {
      if (speaks(rule.rule().effect(), kind)) {
        speaking.add(rule);
      }
    }
    return speaking;
  }

  /** While some way to proceed may still stand, what to do when nothing allows is not said yet. */
  private static boolean speaks(Effect effect, Kind kind) {
    return switch (effect) {
      case ESCALATE, HOLD -> true;
      case SET_ASIDE -> kind != Kind.ESCALATES;
      case NOT_YET -> kind != Kind.ESCALATES && kind != Kind.UNSETTLED;
      case ALLOW -> false;
    };
  }

  private List<Reason> reasons() {
    List<Reason> reasons = new ArrayList<>(fired.size());
    for (CompiledRule rule : fired) {
      Said said = wording.of(rule);
      reasons.add(firing.hasForce(rule) ? said.reason() : said.withoutForce());
    }
    return reasons;
  }

  private List<DoesNotCount> doesNotCount() {
    List<DoesNotCount> all = new ArrayList<>();
    for (Barred test : policy().barred()) {
      Optional<Findings.Entry> entry = findings.entry(test.finding());
      boolean barred =
          entry.isPresent()
              && entry.get().seen().from().isEmpty()
              && test.options().containsAll(entry.get().seen().options());
      if (barred) {
        all.add(
            new DoesNotCount(
                test.finding(),
                label(test.finding(), entry.get().seen().options()),
                test.because(),
                test.sources()));
      }
    }
    return all;
  }

  private EffectivePolicy policy() {
    return compiled.policy();
  }

  private String label(String name, Set<String> options) {
    Finding finding = policy().vocabulary().require(name);
    String found =
        options.stream()
            .map(o -> finding.domain().option(o).map(Option::label).orElse(o))
            .collect(Collectors.joining(" or "));
    return finding.asks() + " " + found;
  }

  private Collection<String> next(List<CompiledRule> speaking, Outcome outcome, Kind kind) {
    if (outcome == Outcome.PROCEED) {
      return List.of();
    }
    Collection<String> steps = new NextSteps(wording, speaking).list();
    if (!steps.isEmpty()) {
      return steps;
    }
    List<String> renewals = renewals(kind);
    if (renewals.isEmpty() && outcome == Outcome.HOLD && kind != Kind.UNSETTLED) {
      return List.of("Do not use the tube.", "Ask a senior colleague and the owner of the policy.");
    }
    return renewals;
  }

  /**
   * What would get a new value for the known findings that keep the nearest allow rule from firing.
   */
  private List<String> renewals(Kind kind) {
    if (kind != Kind.NOT_YET && kind != Kind.NOT_COVERED) {
      return List.of();
    }
    Box nearest = null;
    for (CompiledRule rule : compiled.rules()) {
      for (Box box : rule.has(Effect.ALLOW) ? rule.boxes() : List.<Box>of()) {
        nearest = nearest == null || misses(box) < misses(nearest) ? box : nearest;
      }
    }
    return nearest == null
        ? List.of()
        : failing(nearest).stream().flatMap(f -> f.renew().stream()).distinct().toList();
  }

  /** How many findings keep the case out of the box. */
  private int misses(Box box) {
    int misses = 0;
    for (int i = 0; i < box.size(); i++) {
      misses += (region[box.finding(i)] & box.cells(i)) == 0 ? 1 : 0;
    }
    return misses;
  }

  private List<Finding> failing(Box box) {
    List<Finding> failing = new ArrayList<>();
    for (int i = 0; i < box.size(); i++) {
      if ((region[box.finding(i)] & box.cells(i)) == 0) {
        failing.add(compiled.space().cells(box.finding(i)).finding());
      }
    }
    return failing;
  }

  private Collection<Contact> call(List<CompiledRule> speaking) {
    if (speaking.isEmpty()) {
      return List.of();
    }
    Map<String, Contact> all = new LinkedHashMap<>();
    for (CompiledRule rule : speaking) {
      wording.of(rule).call().forEach(c -> all.putIfAbsent(c.name(), c));
    }
    return all.values();
  }

  private Collection<String> cautions(Outcome outcome, LocalDate today) {
    List<String> always = wording.cautions(today);
    if (outcome != Outcome.PROCEED) {
      return always;
    }
    Set<String> all = new LinkedHashSet<>();
    for (CompiledRule rule : fired) {
      if (rule.has(Effect.ALLOW) && firing.hasForce(rule)) {
        wording.of(rule).caution().ifPresent(all::add);
      }
    }
    all.addAll(always);
    return all;
  }
}
