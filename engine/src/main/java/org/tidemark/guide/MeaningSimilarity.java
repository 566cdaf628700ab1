package org.tidemark.guide;

import org.apache.lucene.search.similarities.BM25Similarity;

/**
 * BM25 without the rarity of words: the rarity of a meaning, over all its synonyms, is a weight
 * that the query brings along. Otherwise an article that happens to use a rare synonym would win.
 */
final class MeaningSimilarity extends BM25Similarity {
  private static final float SATURATION = 0.9f;
  private static final float LENGTH = 0.3f;

  MeaningSimilarity() {
    super(SATURATION, LENGTH);
  }

  @Override
  protected float idf(long articles, long all) {
    return 1f;
  }
}
