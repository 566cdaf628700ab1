package org.tidemark.policies;

import java.util.function.Supplier;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Prover;
import org.tidemark.testkit.TreeTable;

/**
 * Whether a table leaves nothing open, and whether one table is nowhere less cautious than another:
 * true and broken, against Z3, and the first also against the analysis of KIE, as far as that one
 * ends within minutes.
 */
final class Tables {
  private static final int[] SIZES = {50, 200, 500, 1_500};
  private static final int[] COLUMNS = {3, 5, 7, 10};

  /** Cells, rows by columns; beyond it the analysis of KIE goes on for many minutes a table. */
  private static final int LARGEST_FOR_KIE = 1_000;

  private Tables() {}

  static void measure() {
    Measure.line(
        "rows x columns  question                 here        Z3  times faster       KIE  times faster");
    for (int rows : SIZES) {
      for (int columns : COLUMNS) {
        measure(rows, columns);
      }
    }
  }

  private static void measure(int rows, int columns) {
    TreeTable whole = TreeTable.complete(1, columns, rows);
    complete("complete", whole);
    complete("complete, broken", whole.shrunk(1));
    TreeTable strict = whole.stricter(1);
    neverLooser("never looser", strict, whole);
    neverLooser("never looser, broken", strict.looser(whole, 1), whole);
  }

  private static void complete(String question, TreeTable table) {
    EffectivePolicy policy = table.policy();
    Timed us = here(table, () -> said(new Prover().noGap(policy, "use")));
    Timed solver = solver(table, () -> SolvedTable.complete(table));
    line(question, table, us, solver);
  }

  private static void neverLooser(String question, TreeTable table, TreeTable floor) {
    EffectivePolicy policy = table.policy();
    EffectivePolicy below = floor.policy();
    Timed us = here(table, () -> said(new Prover().neverLooser(policy, below, "use")));
    Timed solver = solver(table, () -> SolvedTable.neverLooser(table, floor));
    line(question, table, us, solver);
  }

  private static Timed here(TreeTable table, Supplier<String> what) {
    return Timed.of(table.rows().size() > 500 ? 15 : 40, 9, what);
  }

  private static Timed solver(TreeTable table, Supplier<String> what) {
    return Timed.of(table.rows().size() > 500 ? 2 : 4, 5, what);
  }

  private static String said(Proof proof) {
    return proof.verdict().getClass().getSimpleName();
  }

  private static void line(String question, TreeTable table, Timed us, Timed solver) {
    if (!us.said().equals(solver.said())) {
      throw new IllegalStateException(us.said() + ", and Z3 says " + solver.said());
    }
    String size = table.rows().size() + " x " + table.columns();
    String kie = "-";
    String ratio = "-";
    if (question.startsWith("complete")
        && table.rows().size() * table.columns() <= LARGEST_FOR_KIE) {
      Timed analysis = Timed.once(() -> Integer.toString(Kie.analysed(PlainDmn.xml(table)).size()));
      kie = analysis.words();
      ratio = us.timesFasterThan(analysis);
    }
    Measure.line(
        "%-14s  %-20s %9s %9s  %12s %9s  %12s",
        size, question, us.words(), solver.words(), us.timesFasterThan(solver), kie, ratio);
  }
}
