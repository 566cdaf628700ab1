package org.tidemark.decide;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.tidemark.layer.Atom;
import org.tidemark.model.Condition;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Seen;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Place;

/**
 * The findings that a question turns on, each cut into cells, and the combinations that cannot
 * occur.
 */
public final class CellSpace {
  private final Vocabulary vocabulary;
  private final List<Cells> findings;
  private final long[] everything;
  private final Map<String, Integer> index = new HashMap<>();
  private final List<Hanging> hanging = new ArrayList<>();
  private final List<Box> impossible = new ArrayList<>();

  private CellSpace(Vocabulary vocabulary, List<Cells> findings) {
    this.vocabulary = vocabulary;
    this.findings = List.copyOf(findings);
    this.everything = findings.stream().mapToLong(Cells::all).toArray();
    for (int i = 0; i < findings.size(); i++) {
      index.put(findings.get(i).finding().name(), i);
    }
    for (int i = 0; i < findings.size(); i++) {
      hang(i);
    }
  }

  /** The space of all findings that the atoms mention, and of those that they hang on. */
  public static CellSpace of(Vocabulary vocabulary, Collection<Atom> atoms) {
    Map<String, List<Atom>> byFinding = new HashMap<>();
    for (Atom atom : atoms) {
      byFinding.computeIfAbsent(atom.finding(), f -> new ArrayList<>()).add(atom);
    }
    Set<String> names = new LinkedHashSet<>();
    byFinding.keySet().forEach(f -> addWithParents(vocabulary.require(f), vocabulary, names));
    List<Cells> cells = new ArrayList<>();
    for (Finding finding : vocabulary.findings()) {
      if (names.contains(finding.name())) {
        cells.add(Cells.of(finding, byFinding.getOrDefault(finding.name(), List.of())));
      }
    }
    return new CellSpace(vocabulary, cells);
  }

  private static void addWithParents(Finding finding, Vocabulary vocabulary, Set<String> names) {
    if (names.add(finding.name())) {
      finding
          .applies()
          .forEach(p -> addWithParents(vocabulary.require(p.finding()), vocabulary, names));
    }
  }

  private void hang(int child) {
    Cells cells = findings.get(child);
    if (!cells.finding().applies().isEmpty()) {
      List<Hanging.Parent> parents = cells.finding().applies().stream().map(this::parent).toList();
      Hanging hangs = new Hanging(child, closed(cells), cells.notApplicable(), parents);
      hanging.add(hangs);
      impossible(hangs);
    }
  }

  private Hanging.Parent parent(Condition.Options parent) {
    int finding = position(parent.finding()).orElseThrow();
    return new Hanging.Parent(finding, findings.get(finding).in(Conditions.atom(parent)));
  }

  /** A finding exists, or is as it is when closed, exactly when all that it hangs on is so. */
  private void impossible(Hanging hangs) {
    long open = findings.get(hangs.child()).all() & ~hangs.closed();
    Map<Integer, Long> allHold = new TreeMap<>();
    for (Hanging.Parent parent : hangs.parents()) {
      long fails = findings.get(parent.finding()).all() & ~parent.opens();
      addImpossible(new TreeMap<>(Map.of(hangs.child(), open, parent.finding(), fails)));
      allHold.merge(parent.finding(), parent.opens(), (a, b) -> a & b);
    }
    if (hangs.absent() != 0) {
      allHold.put(hangs.child(), hangs.absent());
      addImpossible(allHold);
    }
  }

  private void addImpossible(Map<Integer, Long> cells) {
    Box.of(cells).ifPresent(impossible::add);
  }

  private static long closed(Cells cells) {
    Optional<String> when = cells.finding().whenClosed();
    return when.map(cells::option).orElseGet(cells::notApplicable);
  }

  public int size() {
    return findings.size();
  }

  public Cells cells(int position) {
    return findings.get(position);
  }

  public Optional<Integer> position(String finding) {
    return Optional.ofNullable(index.get(finding));
  }

  /** The combinations of cells that cannot occur. */
  public List<Box> impossible() {
    return List.copyOf(impossible);
  }

  /** The whole space. */
  public long[] everything() {
    return everything.clone();
  }

  /**
   * The part of the space that is left open by what is known. A finding that is not known may be
   * anything.
   */
  public long[] region(Findings known) {
    long[] region = everything();
    known.entries().forEach((name, entry) -> narrow(region, name, entry.seen()));
    return region;
  }

  private void narrow(long[] region, String name, Seen seen) {
    Integer position = index.get(name);
    if (position != null) {
      region[position] &= findings.get(position).in(seen);
      return;
    }
    // No rule looks at this finding, but that it was seen at all says something of those that it
    // hangs on.
    Finding finding = vocabulary.require(name);
    boolean mayBeClosed = finding.whenClosed().map(c -> seen.options().contains(c)).orElse(false);
    if (!mayBeClosed) {
      finding.applies().forEach(p -> narrow(region, p.finding(), Seen.options(p.options())));
    }
  }

  /**
   * Settles the findings that follow from those that they hang on. Quicker than a search, and as
   * good where all others are known.
   */
  void settle(long[] region) {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (Hanging each : hanging) {
        long left = each.left(region);
        changed |= left != region[each.child()];
        region[each.child()] = left;
      }
    }
  }

  /** The finding and all that hang on it, near or far: what may change when it changes. */
  public int[] block(int position) {
    Set<Integer> block = new LinkedHashSet<>(Set.of(position));
    boolean grew = true;
    while (grew) {
      grew = false;
      for (int i = 0; i < findings.size(); i++) {
        grew |= hangsOn(i, block) && block.add(i);
      }
    }
    return block.stream().mapToInt(Integer::intValue).sorted().toArray();
  }

  private boolean hangsOn(int child, Set<Integer> block) {
    return findings.get(child).finding().applies().stream()
        .anyMatch(p -> position(p.finding()).map(block::contains).orElse(false));
  }

  /**
   * A case as findings: of each cell one value. What does not exist, or follows from what it hangs
   * on, is left out.
   *
   * @param point one cell a finding
   * @param place where the findings are said to be entered
   */
  public Findings findings(long[] point, Place place) {
    Map<String, Findings.Entry> entries = new LinkedHashMap<>();
    for (int i = 0; i < findings.size(); i++) {
      Cell cell = findings.get(i).cell(Long.numberOfTrailingZeros(point[i]));
      String name = findings.get(i).finding().name();
      seen(cell).ifPresent(seen -> entries.put(name, new Findings.Entry(seen, place)));
    }
    return new Findings(entries);
  }

  private static Optional<Seen> seen(Cell cell) {
    if (cell instanceof Cell.OptionCell option) {
      return Optional.of(Seen.option(option.option().name()));
    }
    return cell instanceof Cell.NumberCell number
        ? Optional.of(Seen.number(number.lowest()))
        : Optional.empty();
  }
}
