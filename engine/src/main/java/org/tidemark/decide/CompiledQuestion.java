package org.tidemark.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.tidemark.layer.Atom;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Condition;
import org.tidemark.model.Effect;
import org.tidemark.model.Rule;
import org.tidemark.model.Vocabulary;

/**
 * A question made ready for searching: its findings as cells and its rules as boxes.
 *
 * <p>A set-aside rule takes the force from allow rules. To let boxes say so, each of its boxes gets
 * a switch: one more finding of two cells, which is on exactly in that box. An allow rule has force
 * where it holds and the switches of all boxes that set it aside are off.
 */
public final class CompiledQuestion {
  private static final long OFF = 0b01;
  private static final long ON = 0b10;

  private final EffectivePolicy policy;
  private final EffectiveQuestion question;
  private final CellSpace space;
  private final List<CompiledRule> rules;
  private final List<Switch> switches = new ArrayList<>();
  private final List<Box> impossible = new ArrayList<>();
  private final Map<String, List<Box>> force = new LinkedHashMap<>();
  private final int firstSwitch;

  /** One box of a set-aside rule and the position of its switch. */
  private record Switch(Rule rule, Box box, int position) {}

  private CompiledQuestion(
      EffectivePolicy policy,
      EffectiveQuestion question,
      List<Rule> all,
      CellSpace space,
      int firstSwitch) {
    this.policy = policy;
    this.question = question;
    this.space = space;
    this.firstSwitch = firstSwitch;
    this.rules =
        all.stream()
            .map(r -> new CompiledRule(r, Conditions.boxes(policy, r.given(), space)))
            .toList();
    impossible.addAll(space.impossible());
    rules.stream().filter(r -> r.has(Effect.SET_ASIDE)).forEach(this::switches);
    rules.stream()
        .filter(r -> r.has(Effect.ALLOW))
        .forEach(r -> force.put(r.rule().name(), force(r)));
  }

  public static CompiledQuestion of(EffectivePolicy policy, EffectiveQuestion question) {
    List<Rule> rules = rules(policy, question);
    CellSpace space = CellSpace.of(policy.vocabulary(), atoms(policy, rules));
    return new CompiledQuestion(policy, question, rules, space, space.size());
  }

  /**
   * The same, with measures also cut at the ends of the bands that the policy leaves open, so that
   * each cell lies inside such a band or outside it, even where no rule looks at the band.
   */
  public static CompiledQuestion cutAtOpenBands(
      EffectivePolicy policy, EffectiveQuestion question) {
    List<Rule> rules = rules(policy, question);
    List<Atom> atoms = new ArrayList<>(atoms(policy, rules));
    CellSpace plain = CellSpace.of(policy.vocabulary(), atoms);
    policy.bands().stream()
        .filter(b -> b.notStated().isPresent() && plain.position(b.of()).isPresent())
        .map(b -> new Condition.InNamedBand(b.of(), b.name()))
        .forEach(b -> atoms.addAll(Conditions.atoms(policy, b)));
    CellSpace space = CellSpace.of(policy.vocabulary(), atoms);
    return new CompiledQuestion(policy, question, rules, space, space.size());
  }

  /**
   * The same over a space in which a further condition can be looked at.
   *
   * @param condition the condition, which {@link #boxes(Condition)} then takes
   */
  public static CompiledQuestion lookingAt(
      EffectivePolicy policy, EffectiveQuestion question, Condition condition) {
    List<Rule> rules = rules(policy, question);
    List<Atom> atoms = new ArrayList<>(atoms(policy, rules));
    atoms.addAll(Conditions.atoms(policy, condition));
    CellSpace space = CellSpace.of(policy.vocabulary(), atoms);
    return new CompiledQuestion(policy, question, rules, space, space.size());
  }

  /**
   * The question of two policies over one space, so that a case means the same to both.
   *
   * @param one a policy
   * @param other another one; a finding of a name that both use means the same to both
   * @param question the question's name; both must answer it
   * @return the question of the one, then that of the other
   */
  public static List<CompiledQuestion> both(
      EffectivePolicy one, EffectivePolicy other, String question) {
    EffectiveQuestion first = one.question(question).orElseThrow();
    EffectiveQuestion second = other.question(question).orElseThrow();
    List<Rule> firstRules = rules(one, first);
    List<Rule> secondRules = rules(other, second);
    List<Atom> atoms = new ArrayList<>(atoms(one, firstRules));
    atoms.addAll(atoms(other, secondRules));
    Vocabulary words = one.vocabulary().with(other.vocabulary().findings());
    CellSpace space = CellSpace.of(words, atoms);
    CompiledQuestion compiled = new CompiledQuestion(one, first, firstRules, space, space.size());
    return List.of(
        compiled, new CompiledQuestion(other, second, secondRules, space, compiled.width()));
  }

  private static List<Rule> rules(EffectivePolicy policy, EffectiveQuestion question) {
    return Stream.concat(
            question.rules().stream(), new ImpliedRules(policy, question).all().stream())
        .toList();
  }

  private static List<Atom> atoms(EffectivePolicy policy, List<Rule> rules) {
    return rules.stream().flatMap(r -> Conditions.atoms(policy, r.given()).stream()).toList();
  }

  private void switches(CompiledRule setAside) {
    for (Box box : setAside.boxes()) {
      int position = firstSwitch + switches.size();
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

  private List<Box> force(CompiledRule allow) {
    List<Box> forceful = new ArrayList<>();
    for (Box box : allow.boxes()) {
      Box narrowed = box;
      for (Switch each : switches) {
        if (each.rule().which().contains(allow.rule().name())) {
          narrowed = narrowed.and(each.position(), OFF);
        }
      }
      forceful.add(narrowed);
    }
    return List.copyOf(forceful);
  }

  public EffectivePolicy policy() {
    return policy;
  }

  public EffectiveQuestion question() {
    return question;
  }

  public CellSpace space() {
    return space;
  }

  /** All rules, the implied ones last. */
  public List<CompiledRule> rules() {
    return rules;
  }

  /** The findings and switches that there are. */
  public int width() {
    return firstSwitch + switches.size();
  }

  /** The boxes in which the rules of an effect hold. */
  public List<Box> boxes(Effect effect) {
    return rules.stream().filter(r -> r.has(effect)).flatMap(r -> r.boxes().stream()).toList();
  }

  /** The boxes in which a condition holds, of which the space was made. */
  public List<Box> boxes(Condition condition) {
    return Conditions.boxes(policy, condition, space);
  }

  /** The boxes in which some allow rule holds and nothing sets it aside. */
  public List<Box> force() {
    return force.values().stream().flatMap(List::stream).toList();
  }

  /** The boxes in which one allow rule holds and nothing sets it aside. */
  public List<Box> force(String allowRule) {
    return force.getOrDefault(allowRule, List.of());
  }

  /**
   * The boxes in which one allow rule holds and nothing but the given set-aside rule sets it aside.
   */
  public List<Box> forceButFor(CompiledRule allow, String setAside) {
    List<Box> boxes = new ArrayList<>();
    for (Box box : allow.boxes()) {
      Box narrowed = box;
      for (Switch each : switches) {
        boolean others = !each.rule().name().equals(setAside);
        if (others && each.rule().which().contains(allow.rule().name())) {
          narrowed = narrowed.and(each.position(), OFF);
        }
      }
      boxes.add(narrowed);
    }
    return boxes;
  }

  /** The combinations that cannot occur. */
  public List<Box> impossible() {
    return List.copyOf(impossible);
  }

  /** A region of findings with every switch left to follow from them. */
  public long[] withSwitches(long[] region) {
    return withSwitches(region, width());
  }

  /** The same, where further switches stand behind. */
  public static long[] withSwitches(long[] region, int width) {
    long[] wide = Arrays.copyOf(region, width);
    Arrays.fill(wide, region.length, wide.length, OFF | ON);
    return wide;
  }

  /**
   * A finding and everything that may change with it: what hangs on it, and the switches that those
   * turn.
   */
  public int[] block(int position) {
    return withSwitchesOf(space.block(position));
  }

  /** Findings and the switches that they turn. */
  public int[] withSwitchesOf(int[] findings) {
    List<Integer> block = new ArrayList<>();
    Arrays.stream(findings).forEach(block::add);
    switches.stream()
        .filter(s -> s.box().mentionsAny(findings))
        .forEach(s -> block.add(s.position()));
    return block.stream().mapToInt(Integer::intValue).toArray();
  }
}
