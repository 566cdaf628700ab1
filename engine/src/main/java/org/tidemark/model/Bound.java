package org.tidemark.model;

/**
 * One end of a band.
 *
 * @param limit the number
 * @param inclusive whether the number itself belongs to the band
 */
public record Bound(Limit limit, boolean inclusive) {}
