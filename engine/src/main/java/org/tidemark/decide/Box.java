package org.tidemark.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A region of the space of findings: for some findings, the cells that they may have, as bits of a
 * long. A rule holds in a few boxes; a case lies in a box when each of these findings has one of
 * its cells.
 */
public final class Box {
  private final int[] findings;
  private final long[] cells;

  private Box(int[] findings, long[] cells) {
    this.findings = findings;
    this.cells = cells;
  }

  /**
   * The box that these cells make; empty if some finding is left without a cell, since then no case
   * lies in it.
   */
  public static Optional<Box> of(Map<Integer, Long> cells) {
    if (cells.containsValue(0L)) {
      return Optional.empty();
    }
    TreeMap<Integer, Long> sorted = new TreeMap<>(cells);
    int[] findings = sorted.keySet().stream().mapToInt(Integer::intValue).toArray();
    long[] masks = sorted.values().stream().mapToLong(Long::longValue).toArray();
    return Optional.of(new Box(findings, masks));
  }

  public static Box of(int finding, long cells) {
    return new Box(new int[] {finding}, new long[] {cells});
  }

  public int size() {
    return findings.length;
  }

  public int finding(int i) {
    return findings[i];
  }

  public long cells(int i) {
    return cells[i];
  }

  /**
   * The cells that a finding may have in the box; all of them where the box does not look at it.
   */
  public long cellsOf(int finding) {
    int i = Arrays.binarySearch(findings, finding);
    return i >= 0 ? cells[i] : -1L;
  }

  public boolean mentions(int finding) {
    return Arrays.binarySearch(findings, finding) >= 0;
  }

  public boolean mentionsAny(int[] wanted) {
    return Arrays.stream(wanted).anyMatch(this::mentions);
  }

  /** Whether the case with these cells lies in the box. */
  public boolean contains(long[] point) {
    for (int i = 0; i < findings.length; i++) {
      if ((point[findings[i]] & cells[i]) == 0) {
        return false;
      }
    }
    return true;
  }

  /** Narrows a region to this box; false if nothing is left. */
  public boolean narrow(long[] region) {
    boolean some = true;
    for (int i = 0; i < findings.length; i++) {
      region[findings[i]] &= cells[i];
      some &= region[findings[i]] != 0;
    }
    return some;
  }

  /** The same box and one condition more. */
  public Box and(int finding, long mask) {
    Map<Integer, Long> more = new TreeMap<>();
    for (int i = 0; i < findings.length; i++) {
      more.put(findings[i], cells[i]);
    }
    more.merge(finding, mask, (a, b) -> a & b);
    return of(more).orElseThrow();
  }

  /** The box in which a case lies that lies in both; they look at different findings. */
  public Box and(Box other) {
    Box both = this;
    for (int i = 0; i < other.size(); i++) {
      both = both.and(other.finding(i), other.cells(i));
    }
    return both;
  }

  /** The same box over renamed findings. */
  public Box renamed(int[] names) {
    Map<Integer, Long> renamed = new TreeMap<>();
    for (int i = 0; i < findings.length; i++) {
      renamed.put(names[findings[i]], cells[i]);
    }
    return of(renamed).orElseThrow();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Box box
        && Arrays.equals(findings, box.findings)
        && Arrays.equals(cells, box.cells);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(findings) + Arrays.hashCode(cells);
  }

  @Override
  public String toString() {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < findings.length; i++) {
      parts.add(findings[i] + ":" + Long.toBinaryString(cells[i]));
    }
    return parts.toString();
  }
}
