package org.tidemark.watch;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Lapse;
import org.tidemark.source.Ordered;

/**
 * What a tube's events come to.
 *
 * @param confirmation every word that may be true of the last check
 * @param minutes how many minutes ago it was made, if it surely stands
 * @param gone what ended the check, or may have
 * @param due when the check ends by a clock, if it may stand
 */
public record Watched(
    Set<String> confirmation, Optional<Minutes> minutes, List<Gone> gone, List<Due> due) {
  public Watched {
    confirmation = Ordered.set(confirmation);
    gone = List.copyOf(gone);
    due = List.copyOf(due);
  }

  /**
   * How long ago something was.
   *
   * @param least the least number of minutes
   * @param most the most
   */
  public record Minutes(long least, long most) {}

  /**
   * A lapse that ended the check.
   *
   * @param lapse the lapse
   * @param certain whether it has, whatever the open times were
   * @param check when the check was made, if that is recorded
   * @param after what set it off, in words; nothing for a clock
   * @param at when that was, if it is recorded
   */
  public record Gone(
      Lapse lapse,
      boolean certain,
      Optional<LocalDateTime> check,
      Optional<String> after,
      Optional<LocalDateTime> at) {}

  /**
   * A clock that will end the check.
   *
   * @param lapse the lapse
   * @param by the first minute in which the check no longer stands
   */
  public record Due(Lapse lapse, LocalDateTime by) {}
}
