package org.tidemark.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Condition;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Rule;
import org.tidemark.model.Worse;

/**
 * A table over numbers whose rows are the leaves of a random decision tree: a box that is split on
 * a random column, again and again. Such a table leaves nothing open and nothing overlaps, by
 * construction; what is then done to it is known too.
 *
 * <p>The recipe is that of the literature on checking decision tables, which grows trees from data
 * (Calvanese, Dumas, Laurson, Maggi, Montali, Teinemaa, 'Semantics and Analysis of DMN Decision
 * Tables', BPM 2016); sizes and shares of spoilt rows as there, from memory.
 *
 * @param columns how many numbers a case has
 * @param rows what the table says
 */
public record TreeTable(int columns, List<Row> rows) {
  /** Each number is one of these many, from 0 on. */
  public static final int VALUES = 30;

  private static final List<Effect> EFFECTS = List.of(Effect.ALLOW, Effect.HOLD, Effect.ESCALATE);

  public TreeTable {
    rows = List.copyOf(rows);
  }

  /**
   * One row.
   *
   * @param effect what it does
   * @param low the lowest number of each column that it takes
   * @param high the highest
   */
  public record Row(Effect effect, List<Integer> low, List<Integer> high) {
    public Row {
      low = List.copyOf(low);
      high = List.copyOf(high);
    }

    /** Whether it takes a case. */
    public boolean takes(int[] point) {
      return IntStream.range(0, point.length)
          .allMatch(c -> low.get(c) <= point[c] && point[c] <= high.get(c));
    }

    private Row with(Effect other) {
      return new Row(other, low, high);
    }

    private Row with(int column, int from, int to) {
      List<Integer> lows = new ArrayList<>(low);
      List<Integer> highs = new ArrayList<>(high);
      lows.set(column, from);
      highs.set(column, to);
      return new Row(effect, lows, highs);
    }

    private int width(int column) {
      return high.get(column) - low.get(column) + 1;
    }
  }

  /** The leaves of a tree. The same seed gives the same table. */
  public static TreeTable complete(long seed, int columns, int leaves) {
    Random random = new Random(seed);
    List<Integer> zero = IntStream.range(0, columns).mapToObj(c -> 0).toList();
    List<Integer> top = IntStream.range(0, columns).mapToObj(c -> VALUES - 1).toList();
    List<Row> rows = new ArrayList<>(List.of(new Row(Effect.HOLD, zero, top)));
    while (rows.size() < leaves) {
      int at = random.nextInt(rows.size());
      int column = random.nextInt(columns);
      if (rows.get(at).width(column) > 1) {
        Row row = rows.remove(at);
        int from = row.low().get(column);
        int cut = from + random.nextInt(row.width(column) - 1);
        rows.add(row.with(column, from, cut));
        rows.add(row.with(column, cut + 1, row.high().get(column)));
      }
    }
    rows.replaceAll(r -> r.with(EFFECTS.get(random.nextInt(EFFECTS.size()))));
    return new TreeTable(columns, rows);
  }

  /** The same where one row in ten has lost a number at one of its ends: there are holes now. */
  public TreeTable shrunk(long seed) {
    Random random = new Random(seed);
    List<Row> spoilt = new ArrayList<>(rows);
    for (int left = Math.max(1, rows.size() / 10); left > 0; ) {
      int at = random.nextInt(spoilt.size());
      int column = random.nextInt(columns);
      Row row = spoilt.get(at);
      if (row.width(column) > 1) {
        spoilt.set(at, row.with(column, row.low().get(column) + 1, row.high().get(column)));
        left--;
      }
    }
    return new TreeTable(columns, spoilt);
  }

  /**
   * A table that is nowhere less cautious: one row in five is more so, and one row more in five, of
   * a kind that stops, lies across the others.
   */
  public TreeTable stricter(long seed) {
    Random random = new Random(seed);
    List<Row> strict = new ArrayList<>(rows);
    for (int i = 0; i < rows.size() / 5; i++) {
      int at = random.nextInt(rows.size());
      strict.set(at, strict.get(at).with(Effect.ESCALATE));
      strict.add(across(random));
    }
    return new TreeTable(columns, strict);
  }

  private Row across(Random random) {
    Row row = rows.get(random.nextInt(rows.size())).with(Effect.ESCALATE);
    for (int i = 0; i < 2; i++) {
      int column = random.nextInt(columns);
      int from = Math.max(0, row.low().get(column) - random.nextInt(3));
      row =
          row.with(column, from, Math.min(VALUES - 1, row.high().get(column) + random.nextInt(3)));
    }
    return row;
  }

  /** One row that stopped now allows, and nothing else of the table reaches its lowest corner. */
  public TreeTable looser(TreeTable floor, long seed) {
    Random random = new Random(seed);
    List<Row> loose = new ArrayList<>(rows);
    for (int tries = 0; tries < 10_000; tries++) {
      int at = random.nextInt(floor.rows().size());
      int[] corner = floor.rows().get(at).low().stream().mapToInt(Integer::intValue).toArray();
      if (floor.rows().get(at).effect() != Effect.ALLOW
          && loose.stream().filter(r -> r.takes(corner)).count() == 1) {
        loose.set(at, loose.get(at).with(Effect.ALLOW));
        return new TreeTable(columns, loose);
      }
    }
    throw new AssertionError("every row is reached by others");
  }

  /** What the table answers, by plain reading: what escalates wins, then what holds. */
  public Effect answer(int[] point) {
    List<Effect> taken =
        rows.stream().filter(r -> r.takes(point)).map(Row::effect).distinct().toList();
    if (taken.contains(Effect.ESCALATE)) {
      return Effect.ESCALATE;
    }
    return taken.equals(List.of(Effect.ALLOW)) ? Effect.ALLOW : Effect.HOLD;
  }

  /** Whether any row takes a case. */
  public boolean takes(int[] point) {
    return rows.stream().anyMatch(r -> r.takes(point));
  }

  /** The same, as a policy with the question {@code use}: a finding a column, a rule a row. */
  public EffectivePolicy policy() {
    List<Finding> findings =
        IntStream.range(0, columns)
            .mapToObj(
                c ->
                    PlainPolicies.finding(
                        c, PlainPolicies.whole(VALUES), new Worse.Neither(), List.of()))
            .toList();
    List<Rule> rules = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      rules.add(PlainPolicies.rule("row-" + i, row.effect(), conditions(row), Set.of()));
    }
    return PlainPolicies.policy(findings, rules);
  }

  private List<Condition> conditions(Row row) {
    return IntStream.range(0, columns)
        .filter(c -> row.width(c) < VALUES)
        .mapToObj(c -> PlainPolicies.between("f" + c, row.low().get(c), row.high().get(c)))
        .toList();
  }
}
