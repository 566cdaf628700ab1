package org.tidemark.model;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tidemark.source.Ordered;
import org.tidemark.source.Place;

/**
 * What counts of the lists of a tube's record, before any rule is looked at. Layers only add to it,
 * so that a layer above can never let count what a layer below refuses.
 *
 * @param lists the lists that the policy speaks of; every other list is refused
 * @param drops when an item of a list does not count
 * @param stomachNeeds what a reading of stomach must have to count; bad news needs nothing
 * @param repeats when a pH reading is the repeat of one that was too high
 * @param moved when a length outside says that the tube has moved
 */
public record Counts(
    Set<String> lists,
    List<Criterion> drops,
    List<Criterion> stomachNeeds,
    List<Repeat> repeats,
    List<Moved> moved) {
  public static final Counts NONE =
      new Counts(Set.of(), List.of(), List.of(), List.of(), List.of());

  public Counts {
    lists = Ordered.set(lists);
    drops = List.copyOf(drops);
    stomachNeeds = List.copyOf(stomachNeeds);
    repeats = List.copyOf(repeats);
    moved = List.copyOf(moved);
  }

  /** These and those of another layer. */
  public Counts and(Counts above) {
    Set<String> both = new TreeSet<>(lists);
    both.addAll(above.lists());
    return new Counts(
        both,
        all(drops, above.drops()),
        all(stomachNeeds, above.stomachNeeds()),
        all(repeats, above.repeats()),
        all(moved, above.moved()));
  }

  private static <T> List<T> all(List<T> below, List<T> above) {
    return Stream.concat(below.stream(), above.stream()).toList();
  }

  /** What a reading of stomach needs about one of its fields. */
  public Optional<Criterion> needAbout(String field) {
    return stomachNeeds.stream().filter(n -> n.fields().contains(field)).findFirst();
  }

  /**
   * A second reading counts as a repeat when a wait lies between it and one that was too high.
   *
   * @param tooHigh when a reading is too high
   * @param apart the value of the policy that says how long
   * @param backing how well it is backed
   * @param place where it is written
   */
  public record Repeat(Condition tooHigh, String apart, Rule.Backing backing, Place place) {}

  /**
   * A length outside that differs from an earlier one.
   *
   * @param against when the earlier one was taken, such as {@code at-passing}
   * @param given when the difference says that the tube has moved
   * @param backing how well it is backed
   * @param place where it is written
   */
  public record Moved(String against, Condition given, Rule.Backing backing, Place place) {}

  /**
   * One condition on an item, and what is said of an item that does not count by it.
   *
   * @param list the list
   * @param layer the policy that wrote it
   * @param given the condition, over the fields of the list
   * @param fields the fields that it looks at
   * @param because why the item does not count
   * @param backing how well that is backed
   * @param place where it is written
   */
  public record Criterion(
      String list,
      String layer,
      Condition given,
      List<String> fields,
      String because,
      Rule.Backing backing,
      Place place) {
    public Criterion {
      fields = List.copyOf(fields);
    }
  }
}
