package org.tidemark.model;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.tidemark.source.Place;

/**
 * A number, range or time window that a policy decides, written once.
 *
 * @param name its name
 * @param content what it is
 * @param unit its unit; empty for a time window
 * @param why why this number
 * @param standing how well it is backed
 * @param sources where it is published
 * @param stricter which way it gets stricter, if a layer above may change it at all
 * @param planMaySet how far a plan for one patient may change it
 * @param howFarOff the finding whose readings may be off by so much to either side
 * @param place where it is written
 */
public record PolicyValue(
    String name,
    Content content,
    String unit,
    Optional<String> why,
    Standing standing,
    List<String> sources,
    Optional<Stricter> stricter,
    Optional<PlanBounds> planMaySet,
    Optional<String> howFarOff,
    Place place) {
  /** A value that no plan for one patient may change, and that is not about how far off. */
  public PolicyValue(
      String name,
      Content content,
      String unit,
      Optional<String> why,
      Standing standing,
      List<String> sources,
      Optional<Stricter> stricter,
      Place place) {
    this(
        name,
        content,
        unit,
        why,
        standing,
        sources,
        stricter,
        Optional.empty(),
        Optional.empty(),
        place);
  }

  public PolicyValue {
    sources = List.copyOf(sources);
  }

  /** Which way a value gets stricter. */
  public enum Stricter implements Worded {
    LOWER,
    HIGHER
  }

  /** What a value is. */
  public sealed interface Content {}

  /**
   * One number.
   *
   * @param number the number
   */
  public record Single(BigDecimal number) implements Content {
    public Single {
      number = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    }
  }

  /**
   * From one number to another, both included.
   *
   * @param atLeast the lower
   * @param atMost the upper
   */
  public record Range(BigDecimal atLeast, BigDecimal atMost) implements Content {
    public Range {
      atLeast = atLeast.stripTrailingZeros();
      atMost = atMost.stripTrailingZeros();
    }
  }

  /**
   * Hours of the day; {@code until} itself no longer belongs to it, and it may pass midnight.
   *
   * @param from its first minute
   * @param until the minute after its last
   */
  public record Window(LocalTime from, LocalTime until) implements Content {}

  /** The source leaves it open; rules that need it cannot fire. */
  public record NotStated() implements Content {}

  /**
   * The same, said of the same readings as the value of that name in a layer below: a layer that
   * gives it another number need not repeat what it is about.
   */
  public PolicyValue aboutTheSameAs(PolicyValue below) {
    return new PolicyValue(
        name,
        content,
        unit,
        why,
        standing,
        sources,
        stricter,
        planMaySet,
        howFarOff.or(below::howFarOff),
        place);
  }

  /** The number, when one is stated. */
  public Optional<BigDecimal> number() {
    return content instanceof Single single ? Optional.of(single.number()) : Optional.empty();
  }

  public boolean isStated() {
    return !(content instanceof NotStated);
  }
}
