package org.tidemark.decide;

/** The steps that the searches of one case may still take together. */
final class Steps {
  private int left;

  Steps(int left) {
    this.left = left;
  }

  int left() {
    return left;
  }

  /** Takes note of what a search that began with all of them has left. */
  Search.Result after(Search search) {
    left = search.left();
    return search.result();
  }
}
