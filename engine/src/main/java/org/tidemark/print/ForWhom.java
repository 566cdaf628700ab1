package org.tidemark.print;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.tidemark.model.Condition;
import org.tidemark.model.Finding;
import org.tidemark.model.Option;
import org.tidemark.model.Scope;
import org.tidemark.model.Vocabulary;

/** Says in words whom and where a policy is for. */
final class ForWhom {
  private static final Map<String, String> PEOPLE =
      Map.of("adult", "adults", "child", "children", "newborn", "newborn babies");

  private final Vocabulary vocabulary;

  ForWhom(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  String words(Scope scope) {
    String all = scope.covers().stream().map(this::part).collect(Collectors.joining("; "));
    return all.isEmpty() ? "everybody" : all;
  }

  private String part(Condition.Options part) {
    Finding finding = vocabulary.require(part.finding());
    return finding.domain().options().stream()
        .filter(option -> part.options().contains(option.name()))
        .map(ForWhom::option)
        .collect(Collectors.joining(" or "));
  }

  private static String option(Option option) {
    String people = PEOPLE.get(option.name());
    return people == null ? option.label().toLowerCase(Locale.ROOT) : people;
  }
}
