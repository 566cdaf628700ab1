package org.tidemark.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Boxes to be dodged, laid out flat once for many searches. A box is a run of <em>sides</em>, each
 * one finding and the cells of it that lie in the box; for each finding it is known which sides
 * look at it.
 */
public final class Obstacles {
  /** Where the sides of each box begin; one entry more, for the end. */
  final int[] firstSide;

  /** The finding of each side. */
  final int[] finding;

  /** The cells of each side that lie in the box. */
  final long[] cells;

  /** The box of each side. */
  final int[] box;

  /** The sides that look at each finding; a finding beyond the end is looked at by none. */
  final int[][] lookingAt;

  private final List<Box> boxes;

  private Obstacles(List<Box> boxes) {
    this.boxes = List.copyOf(boxes);
    int sides = boxes.stream().mapToInt(Box::size).sum();
    this.firstSide = new int[boxes.size() + 1];
    this.finding = new int[sides];
    this.cells = new long[sides];
    this.box = new int[sides];
    int side = 0;
    for (int b = 0; b < boxes.size(); b++) {
      firstSide[b] = side;
      for (int i = 0; i < boxes.get(b).size(); i++) {
        finding[side] = boxes.get(b).finding(i);
        cells[side] = boxes.get(b).cells(i);
        box[side++] = b;
      }
    }
    firstSide[boxes.size()] = side;
    this.lookingAt = lookingAt();
  }

  /** The boxes of one list. */
  public static Obstacles of(List<Box> boxes) {
    return new Obstacles(boxes);
  }

  /** These and more, in this order. */
  public Obstacles and(List<Box> more) {
    List<Box> all = new ArrayList<>(boxes);
    all.addAll(more);
    return new Obstacles(all);
  }

  private int[][] lookingAt() {
    int[] many = new int[Arrays.stream(finding).max().orElse(-1) + 1];
    Arrays.stream(finding).forEach(f -> many[f]++);
    int[][] looking = new int[many.length][];
    Arrays.setAll(looking, f -> new int[many[f]]);
    for (int side = finding.length - 1; side >= 0; side--) {
      looking[finding[side]][--many[finding[side]]] = side;
    }
    return looking;
  }

  int count() {
    return boxes.size();
  }
}
