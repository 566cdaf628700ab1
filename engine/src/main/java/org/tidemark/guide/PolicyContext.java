package org.tidemark.guide;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the search must know of the policy whose values stand in the articles.
 *
 * @param id the policy's name
 * @param edition its edition
 * @param phCutOff the highest pH that allows use, when the policy states one
 * @param answers what the policy says at a number, when it says anything
 * @param populations whom the policy is for; none named means everybody
 */
public record PolicyContext(
    String id,
    String edition,
    Optional<BigDecimal> phCutOff,
    Function<QueryReading.Measured, Optional<String>> answers,
    List<Population> populations) {
  public PolicyContext {
    populations = List.copyOf(populations);
  }

  public static PolicyContext of(String id, String edition) {
    return new PolicyContext(id, edition, Optional.empty(), number -> Optional.empty(), List.of());
  }

  public PolicyContext cutOff(BigDecimal highest) {
    return new PolicyContext(id, edition, Optional.of(highest), answers, populations);
  }

  public PolicyContext answers(Function<QueryReading.Measured, Optional<String>> more) {
    return new PolicyContext(id, edition, phCutOff, more, populations);
  }

  public PolicyContext populations(List<Population> whom) {
    return new PolicyContext(id, edition, phCutOff, answers, whom);
  }

  boolean isFor(Population whom) {
    return populations.isEmpty() || populations.contains(whom);
  }
}
