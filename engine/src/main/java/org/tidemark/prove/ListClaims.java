package org.tidemark.prove;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tidemark.layer.Departed;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.layer.Narrowing;
import org.tidemark.model.Axis;
import org.tidemark.model.Barred;
import org.tidemark.model.Condition;
import org.tidemark.model.Departure;
import org.tidemark.model.Fallback;
import org.tidemark.model.Findings;
import org.tidemark.model.Lapse;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.RecordList;
import org.tidemark.model.Tray;
import org.tidemark.source.Place;

/**
 * What no search over findings can see: each number, lapse, ban, step, list and scope of the floor
 * held against the policy's, in the direction in which it is stricter.
 */
final class ListClaims {
  private final EffectivePolicy policy;
  private final EffectivePolicy floor;
  private final List<Proof> proofs = new ArrayList<>();

  ListClaims(EffectivePolicy policy, EffectivePolicy floor) {
    this.policy = policy;
    this.floor = floor;
  }

  List<Proof> prove() {
    floor.values().stream().filter(this::isTheFloors).forEach(this::value);
    floor.barred().forEach(this::barred);
    floor.questions().forEach(this::axes);
    floor.header().scope().covers().forEach(this::scope);
    floor.care().lapses().forEach(this::lapse);
    floor.care().fallbacks().forEach(this::steps);
    floor.care().trays().forEach(this::tray);
    floor.care().records().forEach(this::record);
    return List.copyOf(proofs);
  }

  /**
   * Whether the floor itself has a value, and the policy does not declare that it departs from it.
   */
  private boolean isTheFloors(PolicyValue value) {
    boolean declared =
        policy.departed().stream()
            .map(Departed::departure)
            .anyMatch(d -> d.kind() == Departure.Kind.VALUE && d.name().equals(value.name()));
    return !declared
        && floor.says(value.name()).stream().anyMatch(s -> !s.layer().equals(policy.name()));
  }

  private void claim(String subject, String sentence, boolean holds, Place below) {
    Claim claim = new Claim(Claim.Kind.LIST_NEVER_LOOSER, "", Optional.of(subject), sentence);
    Witness places =
        new Witness(
            Findings.NONE,
            List.of(),
            List.of("The floor has it here: " + below + ".", "The policy: " + at() + "."));
    proofs.add(new Proof(claim, holds ? new Verdict.Proved() : new Verdict.Refuted(places)));
  }

  private Place at() {
    return policy.header().place();
  }

  private static <T> Optional<T> named(Collection<T> all, Function<T, String> name, String wanted) {
    return all.stream().filter(t -> name.apply(t).equals(wanted)).findFirst();
  }

  private void value(PolicyValue below) {
    Optional<PolicyValue> here = policy.value(below.name());
    String now = here.map(policy::print).orElse("nothing");
    claim(
        "value " + below.name(),
        "`"
            + below.name()
            + "` is no looser than the floor's "
            + floor.print(below)
            + ": "
            + now
            + ".",
        here.filter(v -> noLooser(v, below)).isPresent(),
        below.place());
  }

  private static boolean noLooser(PolicyValue here, PolicyValue below) {
    if (!here.unit().equals(below.unit())) {
      return false;
    }
    Optional<BigDecimal> is = here.number();
    Optional<BigDecimal> was = below.number();
    if (below.stricter().isEmpty() || is.isEmpty() || was.isEmpty()) {
      return here.content().equals(below.content());
    }
    int order = is.get().compareTo(was.get());
    return below.stricter().get() == PolicyValue.Stricter.LOWER ? order <= 0 : order >= 0;
  }

  private void barred(Barred below) {
    boolean holds =
        named(policy.barred(), Barred::finding, below.finding())
            .filter(b -> b.options().containsAll(below.options()))
            .isPresent();
    claim(
        "test " + below.finding(),
        "What the floor says of `" + below.finding() + "` must not count does not count here.",
        holds,
        floor.header().place());
  }

  private void axes(EffectiveQuestion below) {
    Set<Axis> here =
        policy.question(below.name()).map(EffectiveQuestion::speaksOf).orElse(Set.of());
    claim(
        "question " + below.name(),
        "`" + below.name() + "` must speak of all that it must speak of in the floor.",
        here.containsAll(below.speaksOf()),
        floor.header().place());
  }

  private void scope(Condition.Options below) {
    boolean holds =
        policy.header().scope().covers().stream()
            .filter(c -> c.finding().equals(below.finding()))
            .anyMatch(c -> below.options().containsAll(c.options()));
    claim(
        "scope " + below.finding(),
        "By `" + below.finding() + "` nobody is covered here whom the floor does not cover.",
        holds,
        floor.header().scope().place());
  }

  private void lapse(Lapse below) {
    boolean holds =
        named(policy.care().lapses(), Lapse::name, below.name())
            .filter(l -> l.does().equals(below.does()) && asOften(l.triggers(), below.triggers()))
            .isPresent();
    claim(
        "lapse " + below.name(),
        "A check lapses here as soon as it does in the floor by `" + below.name() + "`.",
        holds,
        below.place());
  }

  private static boolean asOften(Lapse.Triggers here, Lapse.Triggers below) {
    return here.events().containsAll(below.events())
        && here.uses().containsAll(below.uses())
        && here.clock().equals(below.clock())
        && here.feedModes().equals(below.feedModes())
        && here.seen().equals(below.seen());
  }

  private void steps(Fallback below) {
    Optional<Fallback> here = named(policy.care().fallbacks(), Fallback::name, below.name());
    boolean holds =
        here.isPresent()
            && Narrowing.within(below.after(), here.get().after())
            && bans(here.get()).containsAll(bans(below));
    claim(
        "steps " + below.name(),
        "`"
            + below.name()
            + "` begins as soon as in the floor, and bars every step that the floor bars.",
        holds,
        below.place());
  }

  private static Set<String> bans(Fallback steps) {
    return steps.barredSteps().stream().map(Fallback.BarredStep::name).collect(Collectors.toSet());
  }

  private void tray(Tray below) {
    boolean holds =
        named(policy.care().trays(), Tray::name, below.name())
            .filter(t -> t.items().containsAll(below.items()))
            .filter(t -> t.never().containsAll(below.never()))
            .isPresent();
    claim(
        "tray " + below.name(),
        "The tray `" + below.name() + "` has and bars all that it does in the floor.",
        holds,
        below.place());
  }

  private void record(RecordList below) {
    boolean holds =
        named(policy.care().records(), RecordList::name, below.name())
            .filter(r -> r.fields().containsAll(below.fields()))
            .isPresent();
    claim(
        "record " + below.name(),
        "All that the floor has written down under `" + below.name() + "` is written down here.",
        holds,
        below.place());
  }
}
