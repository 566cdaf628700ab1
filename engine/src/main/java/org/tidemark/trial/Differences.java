package org.tidemark.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Need;
import org.tidemark.decide.Reason;
import org.tidemark.model.Contact;

/** How an answer differs from what a worked case expects. */
final class Differences {
  private final Expected expected;
  private final Decision decision;
  private final List<String> all = new ArrayList<>();

  private Differences(Expected expected, Decision decision) {
    this.expected = expected;
    this.decision = decision;
  }

  static List<String> between(Expected expected, Decision decision) {
    return new Differences(expected, decision).list();
  }

  private List<String> list() {
    if (decision.outcome() != expected.outcome()) {
      all.add(
          "expected "
              + expected.outcome().word()
              + ", and the answer is "
              + decision.outcome().word());
    }
    expected
        .kind()
        .filter(k -> k != decision.kind())
        .ifPresent(
            k -> all.add("expected " + k.word() + ", and the answer is " + decision.kind().word()));
    List<String> fired = decision.reasons().stream().map(Reason::rule).toList();
    missing(expected.rules(), fired, r -> "the rule `" + r + "` does not fire; these do: " + fired);
    expected.notRules().stream()
        .filter(fired::contains)
        .forEach(r -> all.add("the rule `" + r + "` fires, and must not"));
    List<String> asked = decision.ask().stream().map(Need::finding).toList();
    missing(expected.needs(), asked, n -> "`" + n + "` is not asked; these are: " + asked);
    missing(
        expected.next(),
        decision.next(),
        n -> "this is not said: " + n + " What is said: " + String.join(" ", decision.next()));
    List<String> called = decision.call().stream().map(Contact::name).toList();
    missing(expected.call(), called, c -> "`" + c + "` is not called; these are: " + called);
    return List.copyOf(all);
  }

  private void missing(List<String> wanted, List<String> have, Function<String, String> says) {
    wanted.stream().filter(w -> !have.contains(w)).forEach(w -> all.add(says.apply(w)));
  }
}
