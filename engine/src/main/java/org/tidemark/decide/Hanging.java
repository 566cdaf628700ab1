package org.tidemark.decide;

import java.util.List;

/**
 * What one finding hangs on.
 *
 * @param child the finding
 * @param closed the cells that it has where one of the parents is otherwise
 * @param absent the cell that says that it does not exist; 0 if it always has a value
 * @param parents what must be so for it to be open; all of them
 */
record Hanging(int child, long closed, long absent, List<Parent> parents) {
  Hanging {
    parents = List.copyOf(parents);
  }

  /**
   * One finding that another hangs on.
   *
   * @param finding the finding
   * @param opens the cells in which the other is open
   */
  record Parent(int finding, long opens) {}

  /** The cells that are left to the child by what is known of its parents. */
  long left(long[] region) {
    boolean open = true;
    for (int i = 0; i < parents.size(); i++) {
      Parent parent = parents.get(i);
      long cells = region[parent.finding()];
      if ((cells & parent.opens()) == 0) {
        return region[child] & closed;
      }
      open &= (cells & ~parent.opens()) == 0;
    }
    return open ? region[child] & ~absent : region[child];
  }
}
