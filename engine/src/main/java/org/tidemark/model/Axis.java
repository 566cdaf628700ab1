package org.tidemark.model;

/**
 * What a rule speaks about, so that one answer can give one line an axis and none hides another.
 */
public enum Axis implements Worded {
  SCOPE("Scope"),
  POSITION("Position"),
  SIGNS("Signs"),
  PATIENT("Patient"),
  ORDER("Order"),
  FEED("Feed"),
  EQUIPMENT("Equipment"),
  POSTURE("Posture"),
  PEOPLE("People"),
  PLACE("Place and time"),
  RECORD("Record");

  private final String label;

  Axis(String label) {
    this.label = label;
  }

  /** The axis as a heading. */
  public String label() {
    return label;
  }
}
