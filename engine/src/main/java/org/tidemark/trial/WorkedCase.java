package org.tidemark.trial;

import java.util.List;
import java.util.Optional;
import org.tidemark.model.Findings;
import org.tidemark.model.Outcome;
import org.tidemark.model.TubeRecord;
import org.tidemark.model.UsualAnswers;
import org.tidemark.source.Place;

/**
 * Findings, and the answer that a policy must give to them.
 *
 * @param name its name, such as a published incident's number
 * @param kind what sort of situation it is
 * @param source what the situation is taken from
 * @param question the question that is asked
 * @param rest what everything is that the findings do not name
 * @param findings what the source states
 * @param record what the source states of the tube over time
 * @param expected what must come out
 * @param caseSays the answer that the source's own reading gives, in its words
 * @param why why the answer is what it is
 * @param notExpressed facts of the source that the vocabulary cannot say
 * @param usual what findings usually are, for the cases of this file alone
 * @param place where it is written
 */
public record WorkedCase(
    String name,
    String kind,
    String source,
    String question,
    Rest rest,
    Findings findings,
    TubeRecord record,
    Expected expected,
    Optional<String> caseSays,
    Optional<String> why,
    List<String> notExpressed,
    UsualAnswers usual,
    Place place) {
  public WorkedCase {
    notExpressed = List.copyOf(notExpressed);
  }

  /** The answer that must come out. */
  public Outcome expect() {
    return expected.outcome();
  }
}
