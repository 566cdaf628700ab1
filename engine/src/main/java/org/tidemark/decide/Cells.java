package org.tidemark.decide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.tidemark.layer.Atom;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Option;
import org.tidemark.model.Seen;

/** The cells of one finding, each a bit of a long. */
public final class Cells {
  /** A long has 64 bits. */
  static final int MOST = 64;

  private final Finding finding;
  private final List<Cell> cells;
  private final Map<String, Long> options = new HashMap<>();
  private final List<Numbers> numbers = new ArrayList<>();

  private Cells(Finding finding, List<Cell> cells) {
    this.finding = finding;
    this.cells = List.copyOf(cells);
    if (cells.size() > MOST) {
      throw new TooManyCellsException(finding.name(), cells.size());
    }
    for (int i = 0; i < cells.size(); i++) {
      if (cells.get(i) instanceof Cell.OptionCell option) {
        options.put(option.option().name(), 1L << i);
      } else if (cells.get(i) instanceof Cell.NumberCell number) {
        numbers.add(new Numbers(number, 1L << i));
      }
    }
  }

  /** Cuts a finding's domain wherever one of the atoms tells two of its values apart. */
  static Cells of(Finding finding, List<Atom> atoms) {
    List<Cell> cells = new ArrayList<>();
    finding.domain().options().forEach(o -> cells.add(new Cell.OptionCell(o)));
    if (finding.domain() instanceof Domain.Measure measure) {
      cells.addAll(numbers(measure, atoms));
    }
    if (!finding.applies().isEmpty() && finding.whenClosed().isEmpty()) {
      cells.add(new Cell.NotApplicable());
    }
    return new Cells(finding, cells);
  }

  private static List<Cell> numbers(Domain.Measure measure, List<Atom> atoms) {
    NavigableSet<Long> starts = new TreeSet<>();
    long first = measure.ticks(measure.lowest());
    long last = measure.ticks(measure.highest());
    starts.add(first);
    atoms.forEach(
        a -> a.stretch().filter(Atom.Stretch::stated).ifPresent(s -> cut(s, measure, starts)));
    List<Cell> cells = new ArrayList<>();
    for (Long start : starts.subSet(first, true, last, true)) {
      Long next = starts.higher(start);
      long end = next == null || next > last ? last : next - 1;
      cells.add(new Cell.NumberCell(measure.number(start), measure.number(end)));
    }
    return cells;
  }

  private static void cut(Atom.Stretch stretch, Domain.Measure measure, NavigableSet<Long> starts) {
    stretch
        .lower()
        .ifPresent(n -> starts.add(measure.ticks(n) + (stretch.lowerIncluded() ? 0 : 1)));
    stretch
        .upper()
        .ifPresent(n -> starts.add(measure.ticks(n) + (stretch.upperIncluded() ? 1 : 0)));
  }

  public Finding finding() {
    return finding;
  }

  public int count() {
    return cells.size();
  }

  public Cell cell(int index) {
    return cells.get(index);
  }

  public long all() {
    return cells.size() == MOST ? -1L : (1L << cells.size()) - 1;
  }

  /** The cells in which an atom holds. A negation takes in recorded, applicable values only. */
  public long in(Atom atom) {
    long bits = 0;
    for (int i = 0; i < cells.size(); i++) {
      if (holds(atom, cells.get(i))) {
        bits |= 1L << i;
      }
    }
    return bits;
  }

  private static boolean holds(Atom atom, Cell cell) {
    if (cell instanceof Cell.OptionCell option) {
      return holds(atom, option.option());
    }
    if (cell instanceof Cell.NumberCell number && atom.stretch().isPresent()) {
      return atom.stretch().get().stated()
          && atom.stretch().get().holds(number.lowest()) != atom.negated();
    }
    return cell instanceof Cell.NumberCell && atom.negated();
  }

  private static boolean holds(Atom atom, Option option) {
    if (atom.negated()) {
      return !option.nothingRecorded() && !atom.options().contains(option.name());
    }
    return atom.options().contains(option.name());
  }

  /** The cells that what was seen may lie in. */
  public long in(Seen seen) {
    long bits = 0;
    for (String option : seen.options()) {
      bits |= options.getOrDefault(option, 0L);
    }
    Optional<BigDecimal> from = seen.from();
    Optional<BigDecimal> to = seen.to();
    return from.isPresent() && to.isPresent() ? bits | between(from.get(), to.get()) : bits;
  }

  /** The cells that have a number of a stretch. They lie in order, the lowest first. */
  long between(BigDecimal from, BigDecimal to) {
    long bits = 0;
    for (Numbers each : numbers) {
      if (each.cell().lowest().compareTo(to) > 0) {
        return bits;
      }
      bits |= each.cell().highest().compareTo(from) < 0 ? 0 : each.bit();
    }
    return bits;
  }

  /** A cell of numbers and its bit. */
  private record Numbers(Cell.NumberCell cell, long bit) {}

  /** The cell that says the finding does not exist; 0 if it always does. */
  public long notApplicable() {
    int last = cells.size() - 1;
    return cells.get(last) instanceof Cell.NotApplicable ? 1L << last : 0;
  }

  /** The cell of an option. */
  public long option(String name) {
    return options.getOrDefault(name, 0L);
  }
}
