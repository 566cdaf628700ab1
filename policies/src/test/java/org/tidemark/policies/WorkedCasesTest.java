package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.load.VocabularyFile;
import org.tidemark.model.Outcome;
import org.tidemark.model.Rule;
import org.tidemark.trial.Trial;
import org.tidemark.trial.TrialResult;
import org.tidemark.trial.WorkedCase;

/**
 * Every worked case of every policy gets the answer that it must get. The sources stand in the case
 * files: published incidents, near misses and ordinary care, and both sides of each limit.
 */
class WorkedCasesTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final VocabularyFile WORDS = Shipped.words();

  private static List<TrialResult> run(String folder) {
    Trial trial = new Trial(Shipped.policy(folder), WORDS.usual());
    return Shipped.sound(trial.run(Shipped.cases(folder).cases(), TODAY));
  }

  @ParameterizedTest
  @ValueSource(strings = {Shipped.FLOOR, Shipped.HOSPITAL})
  void everyCaseGetsItsAnswer(String folder) {
    List<String> differences =
        run(folder).stream()
            .filter(r -> !r.passes())
            .map(r -> r.worked().name() + ": " + r.differences())
            .toList();
    assertEquals(List.of(), differences);
    assertEquals(Shipped.policy(folder).name(), Shipped.cases(folder).policy());
  }

  @ParameterizedTest
  @ValueSource(strings = {Shipped.FLOOR, Shipped.HOSPITAL})
  void everyRuleFiresInSomeCase(String folder) {
    Set<String> never = new TreeSet<>();
    Shipped.policy(folder)
        .questions()
        .forEach(q -> q.rules().stream().map(Rule::name).forEach(never::add));
    run(folder).forEach(r -> r.decision().reasons().forEach(reason -> never.remove(reason.rule())));
    assertEquals(Set.of(), never);
  }

  /** Where our answer differs from the reading that came with the case, the case says why. */
  @Test
  void everyCaseSaysWhy() {
    assertTrue(all().allMatch(c -> c.why().isPresent()));
  }

  @Test
  void theCasesComeFromManyKindsOfTrouble() {
    Set<String> cases = new TreeSet<>();
    Set<String> kinds = new TreeSet<>();
    Set<String> proceed = new TreeSet<>();
    all()
        .filter(c -> c.name().startsWith("NG-"))
        .forEach(
            c -> {
              cases.add(c.name());
              kinds.add(c.kind());
              if (c.expect() == Outcome.PROCEED) {
                proceed.add(c.name());
              }
            });
    assertEquals(93, cases.size(), "every shared case, by its number");
    assertEquals(22, kinds.size(), kinds::toString);
    assertEquals(
        Set.of(
            "NG-058", "NG-076", "NG-204", "NG-205", "NG-206", "NG-207", "NG-209", "NG-211",
            "NG-213", "NG-217", "NG-218", "NG-220"),
        proceed);
  }

  /** What is left unsaid is about the source, or about what the policy does not ask. */
  @Test
  void whatNoCaseCanSay() {
    assertEquals(
        Set.of(
            "NG-003: that three people helped",
            "NG-004: the hospital had no policy on placing tubes",
            "NG-011: that eleven reports were put together",
            "NG-021: that the local policy asks for any two of several bedside techniques:"
                + " `some-of` could say it, and this policy asks otherwise",
            "NG-043: that there were three X-rays in one day",
            "NG-065: that twelve reports were put together, some of children",
            "NG-066: that only the abstract was read",
            "NG-085: that two readers of one policy came to opposite conclusions",
            "NG-092: that the patient lives in a care home",
            "NG-110: that the route of this feed is not stated",
            "NG-110: whose milk it was",
            "NG-129: that two of the eight had no sign, and only the X-ray showed it",
            "NG-220: the value is a typical one; the study gives times"),
        all()
            .flatMap(c -> c.notExpressed().stream().map(fact -> c.name() + ": " + fact))
            .collect(Collectors.toSet()));
  }

  private static Stream<WorkedCase> all() {
    return Stream.concat(Stream.of(Shipped.FLOOR, Shipped.HOSPITAL), Shipped.STRUCTURES.stream())
        .flatMap(folder -> Shipped.cases(folder).cases().stream());
  }
}
