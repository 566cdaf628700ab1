package org.tidemark.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.source.Ordered;
import org.tidemark.source.Place;

/**
 * One rule of a question. The order of rules never matters.
 *
 * @param name its name, unique over all layers
 * @param layer the policy that wrote it
 * @param effect what it does
 * @param about the axis that it speaks of
 * @param given when it holds
 * @param which the allow rules that a set-aside rule takes the force from
 * @param says what a person reads
 * @param tube what it orders for the tube
 * @param running what it orders for what is running
 * @param contact whom to call
 * @param winsOver rules whose order for the tube gives way to this one's
 * @param backing how well it is backed
 * @param place where it is written
 */
public record Rule(
    String name,
    String layer,
    Effect effect,
    Axis about,
    Condition given,
    Set<String> which,
    Says says,
    Optional<TubeOrder> tube,
    Optional<Running> running,
    Optional<String> contact,
    Set<String> winsOver,
    Backing backing,
    Place place) {
  public Rule {
    which = Ordered.set(which);
    winsOver = Ordered.set(winsOver);
  }

  /**
   * What a person reads. Names of values in braces are filled in.
   *
   * @param because why
   * @param doesNotRuleOut what may still be so, all the same
   * @param next what to do, one action a sentence
   */
  public record Says(Optional<String> because, Optional<String> doesNotRuleOut, List<String> next) {
    public Says {
      next = List.copyOf(next);
    }
  }

  /**
   * Why it should be believed.
   *
   * @param standing how well it is backed
   * @param sources where it is published
   */
  public record Backing(Standing standing, List<String> sources) {
    public Backing {
      sources = List.copyOf(sources);
    }
  }
}
