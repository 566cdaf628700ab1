package org.tidemark.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
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
import org.tidemark.model.Header;
import org.tidemark.model.Option;
import org.tidemark.model.Outcome;
import org.tidemark.model.RecordList;
import org.tidemark.model.Rule;

/**
 * Puts an answer into words: reasons, what does not count, what to do, whom to call, what to bear
 * in mind.
 */
final class Answer {
  private final EffectivePolicy policy;
  private final CompiledQuestion compiled;
  private final Findings findings;
  private final Firing firing;

  Answer(CompiledQuestion compiled, Findings findings, Firing firing) {
    this.policy = compiled.policy();
    this.compiled = compiled;
    this.findings = findings;
    this.firing = firing;
  }

  Decision put(Outcome outcome, Kind kind, Set<Outcome> possible, List<Need> ask, LocalDate today) {
    List<Rule> speaking = speaking(outcome, kind);
    return new Decision(
        compiled.question().name(),
        compiled.question().asks(),
        outcome,
        compiled.question().word(outcome),
        kind,
        possible,
        reasons(),
        doesNotCount(),
        ask,
        new NextSteps(policy, speaking).list(outcome, kind, renewals(kind)),
        call(speaking),
        writeDown(),
        new Cautions(policy.header(), today).list(forcefulAllows(outcome)),
        stamp());
  }

  /**
   * The rules whose words belong to this answer: what blocks it, and when nothing blocks, what
   * keeps it from being allowed.
   */
  private List<Rule> speaking(Outcome outcome, Kind kind) {
    List<Effect> effects =
        outcome == Outcome.PROCEED
            ? List.of()
            : kind == Kind.ESCALATES
                ? List.of(Effect.ESCALATE, Effect.HOLD)
                : List.of(Effect.ESCALATE, Effect.HOLD, Effect.SET_ASIDE, Effect.NOT_YET);
    return effects.stream()
        .flatMap(firing::of)
        .map(CompiledRule::rule)
        .filter(r -> counts(r, kind))
        .toList();
  }

  /** While some way to proceed may still stand, what to do when nothing allows is not said yet. */
  private static boolean counts(Rule rule, Kind kind) {
    return rule.effect() != Effect.NOT_YET || kind != Kind.UNSETTLED;
  }

  private List<Reason> reasons() {
    return firing.rules().stream()
        .sorted(Comparator.comparing((CompiledRule r) -> r.rule().effect()).reversed())
        .map(this::reason)
        .toList();
  }

  private Reason reason(CompiledRule fired) {
    Rule rule = fired.rule();
    return new Reason(
        rule.name(),
        rule.layer(),
        rule.effect(),
        rule.about(),
        rule.says().because().map(policy::fill),
        rule.says().doesNotRuleOut().map(policy::fill),
        firing.without().contains(fired),
        rule.backing().standing(),
        rule.backing().sources());
  }

  private List<DoesNotCount> doesNotCount() {
    List<DoesNotCount> all = new ArrayList<>();
    for (Barred test : policy.barred()) {
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

  private String label(String name, Set<String> options) {
    Finding finding = policy.vocabulary().require(name);
    String found =
        options.stream()
            .map(o -> finding.domain().option(o).map(Option::label).orElse(o))
            .collect(Collectors.joining(" or "));
    return finding.asks() + " " + found;
  }

  /**
   * What would get a new value for the known findings that keep the nearest allow rule from firing.
   */
  private List<String> renewals(Kind kind) {
    if (kind != Kind.NOT_YET && kind != Kind.NOT_COVERED) {
      return List.of();
    }
    long[] region = compiled.space().region(findings);
    Optional<Box> nearest =
        compiled.rules().stream()
            .filter(r -> r.has(Effect.ALLOW))
            .flatMap(r -> r.boxes().stream())
            .min(Comparator.comparingInt(b -> failing(b, region).size()));
    return nearest.map(b -> failing(b, region)).orElse(List.of()).stream()
        .flatMap(f -> f.renew().stream())
        .distinct()
        .toList();
  }

  private List<Finding> failing(Box box, long[] region) {
    List<Finding> failing = new ArrayList<>();
    for (int i = 0; i < box.size(); i++) {
      if ((region[box.finding(i)] & box.cells(i)) == 0) {
        failing.add(compiled.space().cells(box.finding(i)).finding());
      }
    }
    return failing;
  }

  private List<Contact> call(List<Rule> speaking) {
    Map<String, Contact> all = new LinkedHashMap<>();
    for (Rule rule : speaking) {
      rule.contact().flatMap(policy::contact).ifPresent(c -> withItsStandIn(c, all));
    }
    return List.copyOf(all.values());
  }

  private void withItsStandIn(Contact contact, Map<String, Contact> all) {
    if (all.putIfAbsent(contact.name(), contact) == null) {
      contact.otherwise().flatMap(policy::contact).ifPresent(c -> withItsStandIn(c, all));
    }
  }

  private List<String> writeDown() {
    String occasion = compiled.question().name().equals("pass") ? "at-passing" : "at-check";
    return policy.care().records().stream()
        .filter(r -> r.name().equals(occasion))
        .map(RecordList::fields)
        .findFirst()
        .orElse(List.of())
        .stream()
        .map(policy::fill)
        .toList();
  }

  private List<Rule> forcefulAllows(Outcome outcome) {
    return outcome == Outcome.PROCEED
        ? firing
            .of(Effect.ALLOW)
            .filter(r -> !firing.without().contains(r))
            .map(CompiledRule::rule)
            .toList()
        : List.of();
  }

  private Stamp stamp() {
    Header header = policy.header();
    Set<String> below = new LinkedHashSet<>();
    policy.layers().forEach(l -> below.add(l.name()));
    below.remove(header.name());
    return new Stamp(
        header.name(),
        header.title(),
        header.owner(),
        header.edition(),
        header.status(),
        header.reviewBy(),
        List.copyOf(below));
  }
}
