package org.tidemark.decide;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * The findings of a question in groups: two are in one group when one says something of the other,
 * since the other hangs on it or the two cannot both be so. What is seen of one group says nothing
 * of another.
 */
final class Parts {
  private final List<Box> impossible;
  private final int[] group;
  private final BitSet free = new BitSet();

  Parts(CompiledQuestion compiled) {
    int size = compiled.space().size();
    this.impossible =
        compiled.impossible().stream().filter(b -> b.finding(b.size() - 1) < size).toList();
    this.group = new int[size];
    Arrays.setAll(group, i -> i);
    impossible.forEach(this::join);
    for (int i = size - 1; i >= 0; i--) {
      int finding = i;
      free.set(i, impossible.stream().filter(b -> b.mentions(finding)).noneMatch(this::anyFree));
    }
  }

  private void join(Box box) {
    for (int i = 1; i < box.size(); i++) {
      int one = group[box.finding(0)];
      int other = group[box.finding(i)];
      Arrays.setAll(group, f -> group[f] == other ? one : group[f]);
    }
  }

  private boolean anyFree(Box box) {
    for (int i = 0; i < box.size(); i++) {
      if (free.get(box.finding(i))) {
        return true;
      }
    }
    return false;
  }

  /** The group that a finding belongs to. */
  int group(int finding) {
    return group[finding];
  }

  /**
   * Whether a finding may change without regard to other free ones: no two of them are named
   * together in anything that cannot be.
   */
  boolean free(int finding) {
    return free.get(finding);
  }

  /** Whether a case stays one that can be when one finding gets another value. */
  boolean canBe(long[] point, int finding, long cell) {
    long[] changed = point.clone();
    changed[finding] = cell;
    return impossible.stream().filter(b -> b.mentions(finding)).noneMatch(b -> b.contains(changed));
  }
}
