package org.tidemark.decide;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.tidemark.model.Status;

/**
 * Which policy answered.
 *
 * @param policy its name
 * @param title its title
 * @param owner who owns it
 * @param edition its edition
 * @param status where it stands
 * @param reviewBy the day after which it is no longer current
 * @param builtOn the policies below it, the lowest first
 */
public record Stamp(
    String policy,
    String title,
    String owner,
    int edition,
    Status status,
    Optional<LocalDate> reviewBy,
    List<String> builtOn) {
  public Stamp {
    builtOn = List.copyOf(builtOn);
  }
}
