package org.tidemark.trial;

import java.util.List;
import java.util.Optional;
import org.tidemark.decide.Decision;

/**
 * What a policy answers as one finding goes through its values, all else being usual.
 *
 * @param question the question's name
 * @param heading what is varied, in words
 * @param forWhom the population, in words; empty when the question does not look at it
 * @param columns what stands above each column of answers
 * @param rows one value each
 */
public record AnswerTable(
    String question, String heading, String forWhom, List<String> columns, List<Row> rows) {
  public AnswerTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * One value.
   *
   * @param value the value, in words
   * @param limit whether the policy sets a limit here
   * @param answers one a column; none where the finding does not exist
   */
  public record Row(String value, boolean limit, List<Optional<Decision>> answers) {
    public Row {
      answers = List.copyOf(answers);
    }
  }
}
