package org.tidemark.model;

import java.util.Optional;
import org.tidemark.source.Place;

/**
 * Whom to call, by role.
 *
 * @param name its name in the policy
 * @param who the role
 * @param when when the role can be reached, in words
 * @param hours the same as data, where it is given so
 * @param otherwise the contact to use outside those hours
 * @param place where it is written
 */
public record Contact(
    String name,
    String who,
    String when,
    Optional<Hours> hours,
    Optional<String> otherwise,
    Place place) {
  private static final String ALWAYS = "Always";

  /** Whether nobody has to stand in. */
  public boolean isAlwaysThere() {
    return when.equals(ALWAYS);
  }
}
