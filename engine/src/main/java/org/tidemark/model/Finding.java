package org.tidemark.model;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.tidemark.source.Place;

/**
 * Something that can be seen, measured or read: one observation.
 *
 * @param name its name in policies
 * @param asks what the nurse is asked
 * @param shortly what it is called in lists, where that question is long
 * @param domain the values that it may have
 * @param worse which way it gets more worrying
 * @param applies the findings that must be so for this one to exist; all of them
 * @param whenClosed the option that it has when {@code applies} does not hold; without one it does
 *     not exist then
 * @param barred answers that must not count
 * @param askingOrder lower is asked first
 * @param renew what gets a new value when the one we have is of no use
 * @param how how it is worked out from other things, when it is
 * @param published which limits of it were read in publications
 * @param place where it is written
 */
public record Finding(
    String name,
    String asks,
    Optional<String> shortly,
    Domain domain,
    Worse worse,
    List<Condition.Options> applies,
    Optional<String> whenClosed,
    Optional<Barred> barred,
    BigDecimal askingOrder,
    Optional<String> renew,
    Optional<String> how,
    Optional<PublishedLimits> published,
    Place place) {
  public Finding {
    applies = List.copyOf(applies);
  }

  /** A finding that is called by its question and of which no published limits are known. */
  public Finding(
      String name,
      String asks,
      Domain domain,
      Worse worse,
      List<Condition.Options> applies,
      Optional<String> whenClosed,
      Optional<Barred> barred,
      BigDecimal askingOrder,
      Optional<String> renew,
      Optional<String> how,
      Place place) {
    this(
        name,
        asks,
        Optional.empty(),
        domain,
        worse,
        applies,
        whenClosed,
        barred,
        askingOrder,
        renew,
        how,
        Optional.empty(),
        place);
  }

  /** The same with limits that were read in publications. */
  public Finding with(Optional<PublishedLimits> limits) {
    return new Finding(
        name,
        asks,
        shortly,
        domain,
        worse,
        applies,
        whenClosed,
        barred,
        askingOrder,
        renew,
        how,
        limits,
        place);
  }

  /** What stands before its value in a list. */
  public String called() {
    return shortly.map(s -> s + ":").orElse(asks);
  }

  /** Whether another one may be the same things and hangs on the same findings. */
  boolean meansTheSame(Finding other) {
    return domain.equals(other.domain)
        && applies.equals(other.applies)
        && whenClosed.equals(other.whenClosed);
  }
}
