package org.tidemark.guide;

import java.util.ArrayList;
import java.util.List;

/**
 * An entry with its score.
 *
 * @param entry the entry
 * @param score how well it fits
 * @param why why it was moved up, in plain words
 */
record Placed(Entry entry, double score, List<String> why) {
  Placed {
    why = List.copyOf(why);
  }

  Placed raised(double to, String because) {
    List<String> more = new ArrayList<>(why);
    more.add(because);
    return new Placed(entry, to, more);
  }
}
