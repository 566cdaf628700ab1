package org.tidemark.model;

import org.tidemark.source.Place;

/**
 * Something that happens to a tube, a patient or an order.
 *
 * @param name its name in a tube's record
 * @param says it in words
 * @param place where it is written
 */
public record EventKind(String name, String says, Place place) {}
