package org.tidemark.decide;

import java.util.Optional;
import org.tidemark.model.Seen;

/**
 * A finding and what it would be, or is.
 *
 * @param finding its name
 * @param asks what is asked
 * @param called what stands before it in a list: that question, or something shorter
 * @param seen the values that it may have
 * @param found the same in words
 * @param renew how a new value is got, when it was entered already
 */
public record Observation(
    String finding, String asks, String called, Seen seen, String found, Optional<String> renew) {}
