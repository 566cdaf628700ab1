package org.tidemark.trial;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.tidemark.decide.Cell;
import org.tidemark.decide.Cells;
import org.tidemark.model.Domain;

/** Where a question tells two neighbouring readings of a measure apart. */
final class LimitReadings {
  private final Domain.Measure measure;
  private final List<Cell.NumberCell> stretches = new ArrayList<>();

  LimitReadings(Cells cells, Domain.Measure measure) {
    this.measure = measure;
    for (int i = 0; i < cells.count(); i++) {
      if (cells.cell(i) instanceof Cell.NumberCell stretch) {
        stretches.add(stretch);
      }
    }
  }

  boolean none() {
    return stretches.size() < 2;
  }

  /**
   * The readings at each limit and one step to either side, and the two ends of the scale; true for
   * those next to a limit.
   */
  SortedMap<BigDecimal, Boolean> readings() {
    SortedMap<BigDecimal, Boolean> readings = new TreeMap<>();
    readings.put(measure.lowest(), false);
    readings.put(measure.highest(), false);
    for (int i = 1; i < stretches.size(); i++) {
      long below = measure.ticks(stretches.get(i - 1).highest());
      long above = measure.ticks(stretches.get(i).lowest());
      add(below - 1, false, readings);
      add(above + 1, false, readings);
      add(below, true, readings);
      add(above, true, readings);
    }
    return readings;
  }

  private void add(long ticks, boolean limit, SortedMap<BigDecimal, Boolean> readings) {
    BigDecimal number = measure.number(ticks);
    if (measure.inRange(number)) {
      readings.merge(number, limit, Boolean::logicalOr);
    }
  }
}
