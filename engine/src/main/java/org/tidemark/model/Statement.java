package org.tidemark.model;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.tidemark.source.Place;

/**
 * Something that a policy says is always so, or never, whatever else is found. It answers nothing
 * by itself: it is proved of the rules, or refuted.
 *
 * @param name its name, unique over all layers
 * @param layer the policy that wrote it
 * @param mode whether it speaks of what is always so or of what is never so
 * @param question the question that it speaks of
 * @param given the cases that it speaks of
 * @param answer the answer that is always given, or never
 * @param says the statement as one plain sentence
 * @param because why, if that is said
 * @param backing how well it is backed
 * @param place where it is written
 */
public record Statement(
    String name,
    String layer,
    Mode mode,
    String question,
    Condition given,
    Outcome answer,
    String says,
    Optional<String> because,
    Rule.Backing backing,
    Place place) {

  /** Always or never. */
  public enum Mode implements Worded {
    ALWAYS,
    NEVER
  }

  /**
   * The answers that would belie it. To be more cautious than what is always asked is no breach,
   * but for what always proceeds, which would else say nothing.
   */
  public Set<Outcome> rulesOut() {
    return mode == Mode.NEVER ? EnumSet.of(answer) : lessThanAlways();
  }

  private Set<Outcome> lessThanAlways() {
    return switch (answer) {
      case PROCEED -> EnumSet.of(Outcome.HOLD, Outcome.ESCALATE);
      case HOLD -> EnumSet.of(Outcome.PROCEED);
      case ESCALATE -> EnumSet.of(Outcome.PROCEED, Outcome.HOLD);
    };
  }

  /**
   * Whether it asks for caution. Then it binds every layer above; what would keep a layer above
   * from being stricter speaks of the policy that wrote it alone.
   */
  public boolean asksForCaution() {
    return rulesOut().contains(Outcome.PROCEED) && !rulesOut().contains(Outcome.ESCALATE);
  }
}
