package org.tidemark.guide;

import org.tidemark.source.Located;

/** What one file of a collection says: here is an article, or that article no longer counts. */
sealed interface ShelfEntry {
  Located<String> id();

  /**
   * An article.
   *
   * @param article the article
   */
  record Added(Article article) implements ShelfEntry {
    @Override
    public Located<String> id() {
      return article.id();
    }
  }

  /**
   * The notice that an article of a lower collection is not to be shown.
   *
   * @param id which one
   * @param why the reason, for those who wonder where it went
   */
  record Withdrawn(Located<String> id, String why) implements ShelfEntry {}
}
