package org.tidemark.prove;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tidemark.decide.Box;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.decide.CompiledRule;
import org.tidemark.decide.Decision;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.layer.HowFar;
import org.tidemark.model.Outcome;

/**
 * Compares two editions of a policy over every case. An outcome follows from the rules that fire,
 * so wherever the two answer differently some rule fires in one and not in the other; the changes
 * are told by that rule.
 */
public final class Comparison {
  private final List<Change> changes = new ArrayList<>();
  private final List<String> readings = new ArrayList<>();
  private boolean settled = true;

  private Comparison() {}

  /**
   * Compares every question that both answer. Where a finding of one name is two different things
   * to them, no case means the same to both, and nothing is concluded.
   */
  public static Comparison of(EffectivePolicy first, EffectivePolicy second, int budget) {
    Comparison comparison = new Comparison();
    comparison.settled = first.vocabulary().agreesWith(second.vocabulary());
    if (!comparison.settled) {
      return comparison;
    }
    comparison.readings(first, second);
    for (EffectiveQuestion question : first.questions()) {
      if (second.question(question.name()).isPresent()) {
        comparison.new OneQuestion(first, second, question.name(), budget).compare();
      }
    }
    return comparison;
  }

  /**
   * How far readings may be off is no rule: it changes what is known of a case, and not what the
   * case comes to. Cases are compared as they are; that they are known less or more exactly is said
   * beside it, and such editions are never called equal.
   */
  private void readings(EffectivePolicy first, EffectivePolicy second) {
    Map<String, HowFar> was = far(first);
    Map<String, HowFar> is = far(second);
    Set<String> names = new LinkedHashSet<>(was.keySet());
    names.addAll(is.keySet());
    for (String name : names) {
      Optional<HowFar> before = Optional.ofNullable(was.get(name));
      Optional<HowFar> after = Optional.ofNullable(is.get(name));
      int more = by(after).compareTo(by(before));
      if (more != 0) {
        readings.add(
            "How far a reading of `"
                + name
                + "` may be off: was "
                + words(before)
                + ", is now "
                + words(after)
                + ". Readings that near a limit are answered "
                + (more > 0 ? "more" : "less")
                + " cautiously.");
      }
    }
  }

  private static Map<String, HowFar> far(EffectivePolicy policy) {
    Map<String, HowFar> all = new LinkedHashMap<>();
    policy.howFarOff().forEach(far -> all.put(far.finding().name(), far));
    return all;
  }

  private static BigDecimal by(Optional<HowFar> far) {
    return far.map(HowFar::by).orElse(BigDecimal.ZERO);
  }

  private static String words(Optional<HowFar> far) {
    return far.map(HowFar::words).orElse("not stated");
  }

  /** What is said of readings that may be off by more or by less than before. */
  public List<String> readings() {
    return List.copyOf(readings);
  }

  /** Every change, by question, rule and outcomes. */
  public List<Change> changes() {
    return List.copyOf(changes);
  }

  /** Whether it is proved that no case is answered differently, and readings say as much. */
  public boolean equal() {
    return settled && changes.isEmpty() && readings.isEmpty();
  }

  /**
   * Whether every change was found; when not, something is undecided and nothing may be concluded
   * from what is missing.
   */
  public boolean settled() {
    return settled;
  }

  private final class OneQuestion {
    private final String question;
    private final CompiledQuestion first;
    private final CompiledQuestion second;
    private final Replay one;
    private final Replay other;
    private final int budget;
    private final long[] everything;
    private final Part possible;
    private final IdentityHashMap<List<Box>, Set<Box>> dodged = new IdentityHashMap<>();

    OneQuestion(EffectivePolicy first, EffectivePolicy second, String question, int budget) {
      List<CompiledQuestion> both = CompiledQuestion.both(first, second, question);
      this.question = question;
      this.first = both.get(0);
      this.second = both.get(1);
      this.one = new Replay(first, question, this.first.space());
      this.other = new Replay(second, question, this.first.space());
      this.budget = budget;
      this.everything =
          CompiledQuestion.withSwitches(this.first.space().everything(), this.second.width());
      this.possible =
          new Part(
              List.of(), QuestionClaims.join(this.first.impossible(), this.second.impossible()));
    }

    void compare() {
      Set<String> rules = new LinkedHashSet<>();
      first.rules().forEach(r -> rules.add(r.rule().name()));
      second.rules().forEach(r -> rules.add(r.rule().name()));
      for (String rule : rules) {
        List<Part> differing = differing(boxes(first, rule), boxes(second, rule));
        for (Outcome from : Outcome.values()) {
          EnumSet.complementOf(EnumSet.of(from)).forEach(to -> change(rule, differing, from, to));
        }
      }
    }

    private static List<Box> boxes(CompiledQuestion compiled, String rule) {
      return compiled.rules().stream()
          .filter(r -> r.rule().name().equals(rule))
          .map(CompiledRule::boxes)
          .findFirst()
          .orElse(List.of());
    }

    /** Where a rule fires in one and not in the other. */
    private static List<Part> differing(List<Box> here, List<Box> there) {
      List<Part> parts = new ArrayList<>(Part.each(here, there));
      parts.addAll(Part.each(there, here));
      return parts;
    }

    private void change(String rule, List<Part> differing, Outcome from, Outcome to) {
      List<String> telling = new ArrayList<>();
      Hunt hunt =
          new Hunt(
              budget,
              point -> {
                telling.addAll(telling(rule, point, from, to));
                return witness(point, from, to);
              });
      List<Part> was = Part.with(from, first);
      List<Part> is = Part.with(to, second);
      for (Part cause : differing) {
        for (Part before : was) {
          if (mayMeet(cause, before)) {
            Part here = possible.and(cause).and(before);
            is.stream()
                .filter(after -> mayMeet(cause, after) && mayMeet(before, after))
                .forEach(after -> hunt.look(everything, here.and(after)));
          }
        }
      }
      Verdict verdict = hunt.noneMayBeFound();
      settled &= !(verdict instanceof Verdict.Undecided);
      found(verdict).ifPresent(w -> changes.add(new Change(question, rule, from, to, telling, w)));
    }

    /**
     * False where one part dodges a box that the other lies in, so that nothing lies in both. Most
     * rules of two editions are the same, and most pairs of parts end here.
     */
    private boolean mayMeet(Part one, Part other) {
      return one.in().stream().noneMatch(dodged(other)::contains)
          && other.in().stream().noneMatch(dodged(one)::contains);
    }

    /** Many parts dodge one and the same list of boxes. */
    private Set<Box> dodged(Part part) {
      return dodged.computeIfAbsent(part.dodge(), boxes -> new HashSet<>(boxes));
    }

    private List<String> telling(String rule, long[] point, Outcome from, Outcome to) {
      Set<String> ofTheRule = new LinkedHashSet<>();
      for (CompiledQuestion each : List.of(first, second)) {
        boxes(each, rule).stream()
            .filter(b -> b.contains(point))
            .forEach(b -> looksAt(b).forEach(ofTheRule::add));
      }
      boolean stricter = from.compareTo(to) < 0;
      Set<String> names =
          (stricter ? other : one).holdsBack(point, stricter ? to : from, ofTheRule);
      return one.words(point, f -> names.contains(f.name()));
    }

    private Stream<String> looksAt(Box box) {
      return IntStream.range(0, box.size())
          .mapToObj(i -> first.space().cells(box.finding(i)).finding().name());
    }

    private static Optional<Witness> found(Verdict verdict) {
      return verdict instanceof Verdict.Refuted refuted
          ? Optional.of(refuted.witness())
          : Optional.empty();
    }

    private Witness witness(long[] point, Outcome from, Outcome to) {
      Decision before = one.of(point, EnumSet.of(from));
      Decision after = other.of(point, EnumSet.of(to));
      return new Witness(
          one.findings(point),
          one.words(point),
          List.of("Was: " + before.word(), "Is now: " + after.word()));
    }
  }
}
