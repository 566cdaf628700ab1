package org.tidemark.layer;

import java.util.List;
import org.tidemark.model.Condition;

/**
 * Whether one condition plainly lies within another: each part of the wider one is repeated, or
 * narrowed to fewer options, in the narrower. Refuses more than it must, never less.
 */
public final class Narrowing {
  private Narrowing() {}

  /** Whether one condition plainly lies within another. */
  public static boolean within(Condition narrow, Condition wide) {
    List<Condition> have = parts(narrow);
    return parts(wide).stream().allMatch(w -> have.stream().anyMatch(n -> implies(n, w)));
  }

  private static List<Condition> parts(Condition condition) {
    return condition instanceof Condition.AllOf all ? all.parts() : List.of(condition);
  }

  /** Whether one of these plainly lies within one of those, for each of these. */
  static boolean eachWithinSome(List<Condition> these, List<Condition> those) {
    return these.stream().allMatch(n -> those.stream().anyMatch(w -> n.equals(w) || implies(n, w)));
  }

  private static boolean implies(Condition narrow, Condition wide) {
    if (narrow instanceof Condition.Options n && wide instanceof Condition.Options w) {
      return n.finding().equals(w.finding()) && w.options().containsAll(n.options());
    }
    if (narrow instanceof Condition.SomeOf n && wide instanceof Condition.SomeOf w) {
      return n.howMany() >= w.howMany() && w.parts().containsAll(n.parts());
    }
    return narrow.equals(wide);
  }
}
