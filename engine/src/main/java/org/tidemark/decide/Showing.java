package org.tidemark.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.tidemark.model.Domain;

/**
 * What may be found of a finding, and where the truth then lies. For most findings the two are one
 * cell. A reading that may be off lies in one cell, and the truth in all that are near enough.
 *
 * @param place its place among all that may be found, so that neighbours can be told
 * @param shown what is found
 * @param cells the cells in which the truth may then lie
 */
record Showing(int place, Cell shown, long cells) {
  boolean isNumber() {
    return shown instanceof Cell.NumberCell;
  }

  boolean isBeside(Showing other) {
    return Math.abs(place - other.place) == 1;
  }

  /** All that may be found of a finding; that it does not exist is not found. */
  static List<Showing> all(Cells cells, Misreading misreading) {
    List<Showing> all = new ArrayList<>();
    boolean off = misreading.mayBeOff(cells.finding().name());
    for (int i = 0; i < cells.count(); i++) {
      Cell cell = cells.cell(i);
      boolean read = off && cell instanceof Cell.NumberCell;
      if (!read && !(cell instanceof Cell.NotApplicable)) {
        all.add(new Showing(all.size(), cell, 1L << i));
      }
    }
    if (off && cells.finding().domain() instanceof Domain.Measure measure) {
      readings(cells, measure, misreading.ticks(cells.finding().name()), all);
    }
    return all;
  }

  /** The readings, those together after which the truth may lie in the same cells. */
  private static void readings(Cells cells, Domain.Measure measure, long off, List<Showing> all) {
    long first = measure.ticks(measure.lowest());
    long last = measure.ticks(measure.highest());
    NavigableSet<Long> starts = new TreeSet<>(List.of(first));
    for (int i = 0; i < cells.count(); i++) {
      if (cells.cell(i) instanceof Cell.NumberCell number) {
        starts.add(measure.ticks(number.lowest()) - off);
        starts.add(measure.ticks(number.highest()) + off + 1);
      }
    }
    for (long start : starts.subSet(first, true, last, true)) {
      Long next = starts.higher(start);
      long end = next == null || next > last ? last : next - 1;
      Cell.NumberCell read = new Cell.NumberCell(measure.number(start), measure.number(end));
      long truth = cells.between(measure.number(start - off), measure.number(start + off));
      all.add(new Showing(all.size(), read, truth));
    }
  }
}
