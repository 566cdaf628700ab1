package org.tidemark.model;

/** What a rule orders for whatever is running down the tube. */
public enum Running implements Worded {
  STOP("Stop what is running."),
  PAUSE("Pause what is running.");

  private final String sentence;

  Running(String sentence) {
    this.sentence = sentence;
  }

  public String sentence() {
    return sentence;
  }
}
