package org.tidemark.decide;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidemark.model.Contact;
import org.tidemark.model.Outcome;

/**
 * An answer, and everything that goes with it.
 *
 * @param question the question's name
 * @param asks the question in words
 * @param outcome the answer
 * @param word the question's own word for it
 * @param kind why it is what it is
 * @param possible every outcome that is still possible
 * @param reasons the rules that fire whatever is still unknown, the most cautious first
 * @param doesNotCount what was entered and must not count
 * @param countsAs readings that count as a stretch, since they may be off
 * @param ask what to find out, in asking order
 * @param next what to do next, one action a sentence
 * @param call whom to call
 * @param writeDown what to write down
 * @param cautions what to bear in mind
 * @param stamp which policy answered
 */
public record Decision(
    String question,
    String asks,
    Outcome outcome,
    String word,
    Kind kind,
    Set<Outcome> possible,
    List<Reason> reasons,
    List<DoesNotCount> doesNotCount,
    List<CountsAs> countsAs,
    List<Need> ask,
    List<String> next,
    List<Contact> call,
    List<String> writeDown,
    List<String> cautions,
    Stamp stamp) {
  public Decision {
    possible =
        possible.size() == 1
            ? Set.of(possible.iterator().next())
            : Collections.unmodifiableSet(new TreeSet<>(possible));
    reasons = List.copyOf(reasons);
    doesNotCount = List.copyOf(doesNotCount);
    countsAs = List.copyOf(countsAs);
    ask = List.copyOf(ask);
    next = List.copyOf(next);
    call = List.copyOf(call);
    writeDown = List.copyOf(writeDown);
    cautions = List.copyOf(cautions);
  }

  /**
   * The same, and what a tube's record has to say.
   *
   * @param more what was written down and does not count
   * @param mind what else to bear in mind
   */
  public Decision alongside(List<DoesNotCount> more, List<String> mind) {
    List<DoesNotCount> all = new ArrayList<>(more);
    all.addAll(doesNotCount);
    List<String> minding = new ArrayList<>(mind);
    minding.addAll(cautions);
    return new Decision(
        question, asks, outcome, word, kind, possible, reasons, all, countsAs, ask, next, call,
        writeDown, minding, stamp);
  }

  /** What a reading that is still asked for counts as, when it was entered and may be off. */
  public Optional<CountsAs> countsAs(Need need) {
    return countsAs.stream().filter(c -> c.finding().equals(need.finding())).findFirst();
  }

  /** Whether nothing that is still unknown could change the answer. */
  public boolean settled() {
    return kind != Kind.UNSETTLED && kind != Kind.UNDECIDED;
  }
}
