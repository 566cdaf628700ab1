package org.tidemark.model;

/** What a rule orders for the tube itself. */
public enum TubeOrder implements Worded {
  TAKE_OUT("Take the tube out."),
  LEAVE_IN("Leave the tube in."),
  STOP_PASSING("Stop passing the tube.");

  private final String sentence;

  TubeOrder(String sentence) {
    this.sentence = sentence;
  }

  public String sentence() {
    return sentence;
  }
}
