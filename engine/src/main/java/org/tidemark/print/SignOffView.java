package org.tidemark.print;

import java.util.List;

/**
 * The sheet on which a committee approves a policy, settled to its last word.
 *
 * @param title the policy's title
 * @param owner whose policy it is
 * @param name the policy's name
 * @param edition its edition
 * @param status where it stands
 * @param forWhom whom it is for
 * @param builtOn what it builds on
 * @param reviewBy its review date
 * @param day the day of the sheet
 * @param since the edition that it is held against; none for a first edition
 * @param reason why it was changed, as the policy says; none if it does not
 * @param written what is written differently
 * @param answered what is answered differently, each with one case
 * @param answeredNote what the list of answers rests on
 * @param tables what is answered at each limit
 * @param departed in what it is looser than it might be, and says so
 * @param claims what is proved
 * @param stated what the policy itself says is always or never so
 * @param notProved what is not; a policy with any should not be approved
 * @param warnings warnings about its file that nobody has accepted
 * @param accepted warnings that were accepted, by whom and why
 * @param cards cards to print again, and to take down
 * @param alerts alerts that it answers, each with what does
 * @param unanswered alerts that it does not answer
 * @param sources the publications behind it
 */
public record SignOffView(
    String title,
    String owner,
    String name,
    String edition,
    String status,
    String forWhom,
    String builtOn,
    String reviewBy,
    String day,
    List<String> since,
    List<String> reason,
    List<Changed> written,
    List<Answered> answered,
    String answeredNote,
    List<Table> tables,
    List<Departs> departed,
    List<Claimed> claims,
    List<Stated> stated,
    List<String> notProved,
    List<String> warnings,
    List<String> accepted,
    List<String> cards,
    List<String> alerts,
    List<String> unanswered,
    List<String> sources) {
  public SignOffView {
    since = List.copyOf(since);
    reason = List.copyOf(reason);
    written = List.copyOf(written);
    answered = List.copyOf(answered);
    tables = List.copyOf(tables);
    departed = List.copyOf(departed);
    claims = List.copyOf(claims);
    stated = List.copyOf(stated);
    notProved = List.copyOf(notProved);
    warnings = List.copyOf(warnings);
    accepted = List.copyOf(accepted);
    cards = List.copyOf(cards);
    alerts = List.copyOf(alerts);
    unanswered = List.copyOf(unanswered);
    sources = List.copyOf(sources);
  }

  /**
   * Something that is written differently.
   *
   * @param what what it is
   * @param was how it was; empty if it was not there
   * @param is how it is; empty if it is gone
   */
  public record Changed(String what, String was, String is) {}

  /**
   * Cases that are answered differently.
   *
   * @param change from which answer to which, by which rule
   * @param example one such case, a line a finding
   */
  public record Answered(String change, List<String> example) {
    public Answered {
      example = List.copyOf(example);
    }
  }

  /**
   * What is answered as one finding goes through its values.
   *
   * @param heading what is varied
   * @param forWhom the population
   * @param columns above each column of answers
   * @param rows the values
   */
  public record Table(String heading, String forWhom, List<String> columns, List<Row> rows) {
    public Table {
      columns = List.copyOf(columns);
      rows = List.copyOf(rows);
    }
  }

  /**
   * One value.
   *
   * @param value in words
   * @param limit whether there is a limit here
   * @param answers one a column
   */
  public record Row(String value, boolean limit, List<Cell> answers) {
    public Row {
      answers = List.copyOf(answers);
    }
  }

  /**
   * One answer.
   *
   * @param outcome which answer it is: proceed, hold, escalate or none
   * @param word the question's own word
   * @param why by which rules, or what is still open
   */
  public record Cell(String outcome, String word, String why) {}

  /**
   * Something that the policy says is always or never so.
   *
   * @param says its sentence
   * @param means the cases that it speaks of, and what is answered
   * @param by who said it, and on what grounds
   * @param verdict whether it is proved
   */
  public record Stated(String says, String means, String by, String verdict) {}

  /**
   * A declared departure.
   *
   * @param what what is looser, who decided it and until when
   * @param why why
   * @param places where it stands here, and in the layer below
   */
  public record Departs(String what, String why, String places) {}

  /**
   * A sort of claim.
   *
   * @param says what it promises
   * @param proved how many of how many are proved
   */
  public record Claimed(String says, String proved) {}
}
