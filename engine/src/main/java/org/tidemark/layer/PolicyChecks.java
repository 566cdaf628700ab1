package org.tidemark.layer;

import org.tidemark.source.Problems;

/** Everything that is checked of a policy as a whole, once all its layers are in place. */
final class PolicyChecks {
  private PolicyChecks() {}

  static void check(EffectivePolicy policy, Problems problems, Departures departures) {
    new WayChecks(policy, problems).check();
    if (problems.anyError()) {
      return; // what follows spells the conditions out
    }
    new ContactChecks(policy, problems).check();
    new FallbackChecks(policy, problems).check();
    new PopulationChecks(policy, problems).check();
    new AlertChecks(policy, problems).check();
    new RecordChecks(policy, problems).check();
    new LimitChecks(policy, problems).check();
    new MisreadingChecks(policy, problems).check();
    if (problems.anyError()) {
      return; // what follows looks at readings, and a limit that no reading has would only mislead
    }
    new EvidenceChecks(policy, problems, departures).check();
    new Reach(policy, problems).check();
    new QuestionChecks(policy, problems).check();
    new BandChecks(policy, problems).check();
    policy.questions().forEach(q -> new ReadingChecks(policy, q, problems).check());
  }
}
