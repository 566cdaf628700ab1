package org.tidemark.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidemark.model.Condition;

/** When one condition plainly lies within another that counts its parts. */
class NarrowingTest {
  private static final Condition A = new Condition.Options("a", Set.of("x"));
  private static final Condition B = new Condition.Options("b", Set.of("x"));
  private static final Condition C = new Condition.Options("c", Set.of("x"));
  private static final Condition TWO_OF_THREE = new Condition.SomeOf(2, List.of(A, B, C));

  @Test
  void moreOfTheSameLiesWithin() {
    assertEquals(true, within(new Condition.SomeOf(3, List.of(A, B, C)), TWO_OF_THREE));
    assertEquals(true, within(new Condition.SomeOf(2, List.of(A, B)), TWO_OF_THREE));
  }

  @Test
  void fewerOrOthersDoNot() {
    assertEquals(false, within(new Condition.SomeOf(1, List.of(A, B, C)), TWO_OF_THREE));
    Condition d = new Condition.Options("d", Set.of("x"));
    assertEquals(false, within(new Condition.SomeOf(2, List.of(A, B, d)), TWO_OF_THREE));
  }

  private static boolean within(Condition narrow, Condition wide) {
    return Narrowing.within(narrow, wide);
  }
}
