package org.tidemark.policies;

import com.microsoft.z3.ArithExpr;
import com.microsoft.z3.BoolExpr;
import com.microsoft.z3.Context;
import com.microsoft.z3.IntExpr;
import com.microsoft.z3.IntSort;
import com.microsoft.z3.Solver;
import com.microsoft.z3.Status;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.tidemark.model.Effect;
import org.tidemark.testkit.TreeTable;

/**
 * The two questions about tables of numbers, put to Z3 in the plainest way: whole numbers and their
 * ends.
 */
final class SolvedTable implements AutoCloseable {
  private static final BoolExpr[] NO_MORE = {};

  private final Context context = new Context();
  private final IntExpr[] columns;

  private SolvedTable(int columns) {
    this.columns =
        IntStream.range(0, columns)
            .mapToObj(c -> context.mkIntConst("f" + c))
            .toArray(IntExpr[]::new);
  }

  /** Whether every case is taken by a row. */
  static String complete(TreeTable table) {
    try (SolvedTable solved = new SolvedTable(table.columns())) {
      return solved.none(solved.context.mkNot(solved.any(table, List.of(Effect.values()))));
    }
  }

  /** Whether a table is nowhere less cautious than another. */
  static String neverLooser(TreeTable table, TreeTable floor) {
    try (SolvedTable solved = new SolvedTable(table.columns())) {
      Context z3 = solved.context;
      BoolExpr noHelp =
          z3.mkAnd(
              solved.any(floor, List.of(Effect.ESCALATE)),
              z3.mkNot(solved.any(table, List.of(Effect.ESCALATE))));
      BoolExpr goes = z3.mkAnd(solved.proceeds(table), z3.mkNot(solved.proceeds(floor)));
      return solved.none(z3.mkOr(noHelp, goes));
    }
  }

  private String none(BoolExpr refutes) {
    Solver solver = context.mkSolver();
    for (IntExpr column : columns) {
      solver.add(new BoolExpr[] {context.mkGe(column, context.mkInt(0))});
      solver.add(new BoolExpr[] {context.mkLt(column, context.mkInt(TreeTable.VALUES))});
    }
    solver.add(new BoolExpr[] {refutes});
    Status status = solver.check(NO_MORE);
    if (status == Status.UNKNOWN) {
      throw new IllegalStateException(solver.getReasonUnknown());
    }
    return status == Status.UNSATISFIABLE ? "Proved" : "Refuted";
  }

  private BoolExpr proceeds(TreeTable table) {
    return context.mkAnd(
        any(table, List.of(Effect.ALLOW)),
        context.mkNot(any(table, List.of(Effect.HOLD, Effect.ESCALATE))));
  }

  private BoolExpr any(TreeTable table, List<Effect> effects) {
    return context.mkOr(
        table.rows().stream()
            .filter(r -> effects.contains(r.effect()))
            .map(this::takes)
            .toArray(BoolExpr[]::new));
  }

  private BoolExpr takes(TreeTable.Row row) {
    List<BoolExpr> ends = new ArrayList<>();
    for (int c = 0; c < columns.length; c++) {
      ArithExpr<IntSort> column = columns[c];
      if (row.low().get(c) > 0) {
        ends.add(context.mkGe(column, context.mkInt(row.low().get(c))));
      }
      if (row.high().get(c) < TreeTable.VALUES - 1) {
        ends.add(context.mkLe(column, context.mkInt(row.high().get(c))));
      }
    }
    return context.mkAnd(ends.toArray(BoolExpr[]::new));
  }

  @Override
  public void close() {
    Arrays.fill(columns, null);
    context.close();
  }
}
