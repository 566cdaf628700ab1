package org.tidemark.model;

/** What a rule does when its condition holds. Only {@link #ALLOW} can ever loosen an answer. */
public enum Effect implements Worded {
  /** One way to proceed. */
  ALLOW,
  /** Takes the force from the allow rules that it names, and leaves other evidence standing. */
  SET_ASIDE,
  /** Blocks nothing; says what to do when nothing allows. */
  NOT_YET,
  /** Blocks: the person here can mend it. */
  HOLD,
  /** Blocks: somebody else must act or decide. */
  ESCALATE
}
