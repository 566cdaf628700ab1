package org.tidemark.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Two cases of one question looked at together: they share all but some findings, which have a
 * second copy behind all others. A search over a twin finds two cases that differ only there.
 */
public final class Twin {
  private final CompiledQuestion compiled;
  private final int[] differing;
  private final int[] place;

  /**
   * Two cases that may differ in some findings.
   *
   * @param compiled the question
   * @param differing where they may differ, the switches that those turn included
   */
  public Twin(CompiledQuestion compiled, int[] differing) {
    this.compiled = compiled;
    this.differing = differing.clone();
    this.place = new int[compiled.width()];
    Arrays.setAll(place, i -> i);
    for (int i = 0; i < differing.length; i++) {
      place[differing[i]] = compiled.width() + i;
    }
  }

  /** Where a finding of the second case stands. */
  public int inSecond(int finding) {
    return place[finding];
  }

  /** Whether a box looks at anything in which the two may differ. */
  public boolean looksAtDifference(Box box) {
    return box.mentionsAny(differing);
  }

  /** A box, of the second case. */
  public Box second(Box box) {
    return looksAtDifference(box) ? box.renamed(place) : box;
  }

  public List<Box> second(List<Box> boxes) {
    return boxes.stream().map(this::second).toList();
  }

  /** The combinations that cannot occur in either case. */
  public List<Box> impossible() {
    List<Box> all = new ArrayList<>(compiled.impossible());
    compiled.impossible().stream()
        .filter(this::looksAtDifference)
        .map(this::second)
        .forEach(all::add);
    return all;
  }

  /** The region in which each of the two cases lies in the given one. */
  public long[] region(long[] region) {
    long[] wide = compiled.withSwitches(region);
    long[] both = Arrays.copyOf(wide, wide.length + differing.length);
    for (int i = 0; i < differing.length; i++) {
      both[wide.length + i] = wide[differing[i]];
    }
    return both;
  }

  /** The second of the two cases that a search found; the first is its beginning. */
  public long[] secondCase(long[] witness) {
    long[] point = Arrays.copyOf(witness, compiled.width());
    for (int i = 0; i < differing.length; i++) {
      point[differing[i]] = witness[compiled.width() + i];
    }
    return point;
  }
}
