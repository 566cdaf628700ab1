package org.tidemark.model;

import java.util.List;
import org.tidemark.source.Located;

/**
 * An alert that a policy answers.
 *
 * @param alert the citation of what it asks
 * @param answeredBy the names of the rules, values, trays and so on that do what it asks
 */
public record AlertAnswer(String alert, List<Located<String>> answeredBy) {
  public AlertAnswer {
    answeredBy = List.copyOf(answeredBy);
  }
}
