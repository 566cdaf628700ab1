package org.tidemark.model;

import org.tidemark.source.Place;

/**
 * What makes a confirmation of position stop standing.
 *
 * @param name its name
 * @param says the trigger in words; names of values in braces are filled in
 * @param layer the policy that wrote it
 * @param backing how well it is backed
 * @param place where it is written
 */
public record Lapse(String name, String says, String layer, Rule.Backing backing, Place place) {}
