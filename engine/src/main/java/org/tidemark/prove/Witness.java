package org.tidemark.prove;

import java.util.List;
import org.tidemark.model.Findings;

/**
 * A case that shows something, every finding known, and what the ordinary evaluator says of it.
 *
 * @param findings the case
 * @param words the case in bedside words, one finding a line; readings that no rule tells apart as
 *     a stretch
 * @param answers what is answered, in words; two for a claim about two cases or two policies
 */
public record Witness(Findings findings, List<String> words, List<String> answers) {
  public Witness {
    words = List.copyOf(words);
    answers = List.copyOf(answers);
  }
}
