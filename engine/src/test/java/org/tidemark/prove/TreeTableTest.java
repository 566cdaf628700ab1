package org.tidemark.prove;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidemark.model.Effect;
import org.tidemark.model.Findings;
import org.tidemark.testkit.TreeTable;

/**
 * Tables whose rows are the leaves of a tree: what holds of them is known by construction, and a
 * search that only ever leaves boxes is lost in them.
 */
class TreeTableTest {
  private static final List<Effect> CAUTION = List.of(Effect.ALLOW, Effect.HOLD, Effect.ESCALATE);

  private static Verdict noGap(TreeTable table) {
    return new Prover().noGap(table.policy(), "use").verdict();
  }

  private static Verdict neverLooser(TreeTable table, TreeTable floor) {
    return new Prover().neverLooser(table.policy(), floor.policy(), "use").verdict();
  }

  /** The case of a refutation, a number a column; what the claim never looks at is 0. */
  private static int[] refuted(Verdict verdict, TreeTable table) {
    Findings found =
        assertInstanceOf(Verdict.Refuted.class, verdict, verdict::toString).witness().findings();
    return IntStream.range(0, table.columns())
        .map(
            c ->
                found
                    .entry("f" + c)
                    .flatMap(e -> e.seen().from())
                    .map(n -> n.intValueExact())
                    .orElse(0))
        .toArray();
  }

  @ParameterizedTest
  @CsvSource({"50,10", "200,5", "500,3", "500,10"})
  void aTreeHasNoGapAndAShrunkOneHas(int rows, int columns) {
    for (long seed = 0; seed < (rows < 500 ? 3 : 1); seed++) {
      TreeTable whole = TreeTable.complete(seed, columns, rows);
      assertEquals(new Verdict.Proved(), noGap(whole));
      TreeTable shrunk = whole.shrunk(seed);
      assertFalse(shrunk.takes(refuted(noGap(shrunk), shrunk)), "the case is one of a hole");
    }
  }

  @ParameterizedTest
  @CsvSource({"50,10", "200,5", "500,3", "500,10"})
  void aStricterTableIsNeverLooserAndALooserOneIs(int rows, int columns) {
    for (long seed = 0; seed < (rows < 500 ? 3 : 1); seed++) {
      TreeTable floor = TreeTable.complete(seed, columns, rows);
      TreeTable strict = floor.stricter(seed);
      assertEquals(new Verdict.Proved(), neverLooser(strict, floor));
      TreeTable loose = strict.looser(floor, seed);
      int[] point = refuted(neverLooser(loose, floor), loose);
      List<Effect> both = List.of(floor.answer(point), loose.answer(point));
      assertTrue(CAUTION.indexOf(both.get(0)) > CAUTION.indexOf(both.get(1)), both::toString);
    }
  }

  @ParameterizedTest
  @CsvSource({"50,3", "500,10"})
  void toItselfATableIsNeverLooser(int rows, int columns) {
    TreeTable table = TreeTable.complete(9, columns, rows);
    assertEquals(new Verdict.Proved(), neverLooser(table, table));
  }
}
