package org.tidemark.policies;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.tidemark.decide.Decider;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Findings;
import org.tidemark.testkit.HostilePolicies;

/** Policies made to be hard, with nothing known: settled, or undecided within the budget. */
final class Hostile {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  private Hostile() {}

  static void measure() {
    Measure.line("findings  stops a finding     median      worst  kinds of 30");
    for (int findings : new int[] {40, 60, 80, 100, 120}) {
      for (int stopsForTen : new int[] {20, 40, 50, 65}) {
        measure(findings, stopsForTen);
      }
    }
  }

  private static void measure(int findings, int stopsForTen) {
    List<Double> micros = new ArrayList<>();
    TreeMap<String, Integer> kinds = new TreeMap<>();
    for (long seed = 0; seed < 30; seed++) {
      EffectivePolicy policy = HostilePolicies.policy(seed, findings, stopsForTen);
      Decider decider = Decider.of(policy, "use").orElseThrow();
      Timed timed = Timed.of(2, 3, () -> decider.decide(Findings.NONE, TODAY).kind().word());
      micros.add(timed.middle());
      kinds.merge(timed.said(), 1, Integer::sum);
    }
    micros.sort(null);
    Measure.line(
        "%8d  %15.1f  %9s  %9s  %s",
        findings,
        stopsForTen / 10.0,
        Timed.words(micros.get(15)),
        Timed.words(micros.get(29)),
        kinds);
  }
}
