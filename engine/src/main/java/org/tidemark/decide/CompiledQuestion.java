package org.tidemark.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tidemark.layer.Atom;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Effect;
import org.tidemark.model.Rule;

/**
 * A question made ready for searching: its findings as cells and its rules as boxes.
 *
 * <p>A set-aside rule takes the force from allow rules. To let boxes say so, each of its boxes gets
 * a switch: one more finding of two cells, which is on exactly in that box. An allow rule has force
 * where it holds and the switches of all boxes that set it aside are off.
 */
final class CompiledQuestion {
  private static final long OFF = 0b01;
  private static final long ON = 0b10;

  private final EffectivePolicy policy;
  private final EffectiveQuestion question;
  private final CellSpace space;
  private final List<CompiledRule> rules;
  private final List<Switch> switches = new ArrayList<>();
  private final List<Box> impossible = new ArrayList<>();
  private final List<Box> force = new ArrayList<>();

  /** One box of a set-aside rule and the position of its switch. */
  private record Switch(Rule rule, Box box, int position) {}

  private CompiledQuestion(EffectivePolicy policy, EffectiveQuestion question) {
    this.policy = policy;
    this.question = question;
    List<Rule> all =
        Stream.concat(question.rules().stream(), new ImpliedRules(policy, question).all().stream())
            .toList();
    List<Atom> atoms =
        all.stream().flatMap(r -> Conditions.atoms(policy, r.given()).stream()).toList();
    this.space = CellSpace.of(policy.vocabulary(), atoms);
    this.rules =
        all.stream()
            .map(r -> new CompiledRule(r, Conditions.boxes(policy, r.given(), space)))
            .toList();
    impossible.addAll(space.impossible());
    rules.stream().filter(r -> r.has(Effect.SET_ASIDE)).forEach(this::switches);
    rules.stream().filter(r -> r.has(Effect.ALLOW)).forEach(this::force);
  }

  static CompiledQuestion of(EffectivePolicy policy, EffectiveQuestion question) {
    return new CompiledQuestion(policy, question);
  }

  private void switches(CompiledRule setAside) {
    for (Box box : setAside.boxes()) {
      int position = space.size() + switches.size();
      switches.add(new Switch(setAside.rule(), box, position));
      impossible.add(box.and(position, OFF));
      for (int i = 0; i < box.size(); i++) {
        long outside = space.cells(box.finding(i)).all() & ~box.cells(i);
        if (outside != 0) {
          impossible.add(Box.of(box.finding(i), outside).and(position, ON));
        }
      }
    }
  }

  private void force(CompiledRule allow) {
    for (Box box : allow.boxes()) {
      Box forceful = box;
      for (Switch each : switches) {
        if (each.rule().which().contains(allow.rule().name())) {
          forceful = forceful.and(each.position(), OFF);
        }
      }
      force.add(forceful);
    }
  }

  EffectivePolicy policy() {
    return policy;
  }

  EffectiveQuestion question() {
    return question;
  }

  CellSpace space() {
    return space;
  }

  /** All rules, the implied ones last. */
  List<CompiledRule> rules() {
    return rules;
  }

  /** The findings and switches that there are. */
  int width() {
    return space.size() + switches.size();
  }

  /** The boxes in which the rules of an effect hold. */
  List<Box> boxes(Effect effect) {
    return rules.stream().filter(r -> r.has(effect)).flatMap(r -> r.boxes().stream()).toList();
  }

  /** The boxes in which some allow rule holds and nothing sets it aside. */
  List<Box> force() {
    return List.copyOf(force);
  }

  /** The combinations that cannot occur. */
  List<Box> impossible() {
    return List.copyOf(impossible);
  }

  /** A region of findings with every switch left to follow from them. */
  long[] withSwitches(long[] region) {
    long[] wide = java.util.Arrays.copyOf(region, width());
    java.util.Arrays.fill(wide, region.length, wide.length, OFF | ON);
    return wide;
  }

  /**
   * A finding and everything that may change with it: what hangs on it, and the switches that those
   * turn.
   */
  int[] block(int position) {
    List<Integer> block = new ArrayList<>();
    int[] findings = space.block(position);
    java.util.Arrays.stream(findings).forEach(block::add);
    switches.stream()
        .filter(s -> s.box().mentionsAny(findings))
        .forEach(s -> block.add(s.position()));
    return block.stream().mapToInt(Integer::intValue).toArray();
  }
}
