package org.tidemark.model;

import java.math.BigDecimal;
import org.tidemark.source.Place;

/**
 * How far a reading of a measure may be off, so that it counts as a stretch.
 *
 * @param finding the measure
 * @param offBy how far, in its unit
 * @param backing how well that is backed
 * @param place where it is written
 */
public record ReaderError(String finding, BigDecimal offBy, Rule.Backing backing, Place place) {}
