package org.tidemark.print;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Bibliography;

/** Which alerts a policy and the layers below it answer, and by what. */
final class SignOffAlerts {
  private final Bibliography bibliography;
  private final Map<String, Set<String>> answers = new LinkedHashMap<>();

  SignOffAlerts(EffectivePolicy policy, Bibliography bibliography) {
    this.bibliography = bibliography;
    policy.layers().stream()
        .flatMap(layer -> layer.control().alerts().stream())
        .forEach(
            a -> {
              Set<String> by = answers.computeIfAbsent(a.alert(), x -> new LinkedHashSet<>());
              a.answeredBy().forEach(n -> by.add(n.value().replace('-', ' ')));
            });
  }

  List<String> answered() {
    return answers.entrySet().stream()
        .map(e -> asks(e.getKey()) + " Answered by: " + String.join(", ", e.getValue()) + ".")
        .toList();
  }

  List<String> unanswered() {
    return bibliography.alerts().stream()
        .filter(alert -> !answers.containsKey(alert))
        .map(this::asks)
        .toList();
  }

  private String asks(String alert) {
    return bibliography
        .entry(alert)
        .map(e -> e.says() + " (" + alert + ": " + e.publication() + ")")
        .orElse(alert);
  }
}
