package org.tidemark.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.tidemark.source.Place;

/**
 * Something in which a policy is looser than what it builds on, or than what counts as evidence,
 * and says so: why, who decided it, and until when.
 *
 * @param kind what it departs in
 * @param name the name of the value, rule, lapse, term, test or list of steps
 * @param rule the rule that rests on a test that must not count
 * @param why why
 * @param approvedBy who decided it, by role; empty if a published page does not say
 * @param until its last day; empty if a published page does not say
 * @param layer the policy that wrote it
 * @param sources where that is published
 * @param place where it is written
 */
public record Departure(
    Kind kind,
    String name,
    Optional<String> rule,
    String why,
    Optional<String> approvedBy,
    Optional<LocalDate> until,
    String layer,
    List<String> sources,
    Place place) {
  public Departure {
    sources = List.copyOf(sources);
  }

  /** Whether its last day lies before the day. */
  public boolean endedBefore(LocalDate today) {
    return until.isPresent() && until.get().isBefore(today);
  }

  /** What a policy may depart in. */
  public enum Kind implements Worded {
    /** A number that is not as strict. */
    VALUE,
    /** A rule of a layer below that does not apply, or a further way to proceed. */
    RULE,
    /** A lapse of a layer below that does not apply. */
    LAPSE,
    /** A term whose change loosens a rule or a lapse. */
    TERM,
    /** A test that must not count, and counts in one rule. */
    TEST,
    /** Steps that begin later, or that take what a layer below bars. */
    STEPS
  }
}
