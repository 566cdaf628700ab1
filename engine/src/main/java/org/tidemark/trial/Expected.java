package org.tidemark.trial;

import java.util.List;
import java.util.Optional;
import org.tidemark.decide.Kind;
import org.tidemark.model.Outcome;

/**
 * What must come out of a worked case. All that is stated is checked; of the rest anything may come
 * out.
 *
 * @param outcome the answer
 * @param kind why it is what it is
 * @param rules rules that must fire, whatever is unknown
 * @param notRules rules that must not be sure to fire
 * @param needs findings that must still be asked
 * @param next what must stand among the next steps, word for word
 * @param call contacts that must be called
 */
public record Expected(
    Outcome outcome,
    Optional<Kind> kind,
    List<String> rules,
    List<String> notRules,
    List<String> needs,
    List<String> next,
    List<String> call) {
  public Expected {
    rules = List.copyOf(rules);
    notRules = List.copyOf(notRules);
    needs = List.copyOf(needs);
    next = List.copyOf(next);
    call = List.copyOf(call);
  }
}
