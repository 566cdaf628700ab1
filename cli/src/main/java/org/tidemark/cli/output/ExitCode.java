package org.tidemark.cli.output;

/** How the program ends; one meaning each. An outcome such as hold is an answer, not an error. */
public enum ExitCode {
  DONE(0, "Done, whatever the answer was."),
  NOT_SO(1, "A claim does not hold, or a worked case does not pass."),
  COMMAND_LINE_WRONG(2, "The command line is wrong."),
  POLICY_BROKEN(3, "The policy or its content is broken."),
  FINDINGS_BROKEN(4, "The findings are broken."),
  NOTHING_FOUND(5, "Nothing was found to work on."),
  UNDECIDED(6, "A claim could not be settled."),
  INTERNAL_FAULT(70, "A fault of the program itself.");

  private final int number;
  private final String meaning;

  ExitCode(int number, String meaning) {
    this.number = number;
    this.meaning = meaning;
  }

  /** The number handed to the operating system. */
  public int number() {
    return number;
  }

  /** One sentence for the help text. */
  public String meaning() {
    return meaning;
  }
}
