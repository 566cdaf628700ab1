package org.tidemark.guide;

/**
 * An article with one policy's values written into it.
 *
 * @param article the article
 * @param markdown its body, filled
 */
public record FilledArticle(Article article, String markdown) {}
