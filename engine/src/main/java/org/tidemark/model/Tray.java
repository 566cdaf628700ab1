package org.tidemark.model;

import java.util.List;
import org.tidemark.source.Place;

/**
 * What to gather for one type of tube.
 *
 * @param name its name
 * @param title the type of tube in words
 * @param items what to gather
 * @param never what must not be on the tray, each as a whole sentence
 * @param forWhom for whom it is, within those whom the policy is for; empty for all of them
 * @param layer the policy that wrote it
 * @param backing how well it is backed
 * @param place where it is written
 */
public record Tray(
    String name,
    String title,
    List<String> items,
    List<String> never,
    List<Condition.Options> forWhom,
    String layer,
    Rule.Backing backing,
    Place place) {
  public Tray {
    items = List.copyOf(items);
    never = List.copyOf(never);
    forWhom = List.copyOf(forWhom);
  }
}
