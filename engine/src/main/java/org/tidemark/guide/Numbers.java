package org.tidemark.guide;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What the policy says at the numbers of a query. Nothing where another answer comes first: an
 * emergency, a tube or a person that this policy is not for.
 */
final class Numbers {
  private final GuidanceIndex index;
  private final PolicyContext policy;
  private final QueryReading reading;
  private final List<Population> asked = new ArrayList<>();
  private final boolean another;

  /**
   * The numbers of a query.
   *
   * @param first the articles that must come first
   */
  Numbers(
      GuidanceIndex index,
      PolicyContext policy,
      QueryReading reading,
      GuidanceFilter filter,
      Collection<String> first) {
    this.index = index;
    this.policy = policy;
    this.reading = reading;
    List<Article> articles = first.stream().map(name -> index.entry(name).article()).toList();
    filter.population().ifPresent(asked::add);
    articles.stream()
        .filter(Numbers::isOfOnePopulation)
        .forEach(article -> asked.addAll(article.populations()));
    this.another = articles.stream().anyMatch(Predicate.not(Numbers::isOfOnePopulation));
  }

  private static boolean isOfOnePopulation(Article article) {
    return article.populations().size() == 1 && !article.actNow() && !article.pointer();
  }

  QueryReading reading() {
    return reading;
  }

  /** What the policy says at the first number that it speaks of. */
  Optional<String> says() {
    return says(number -> true);
  }

  /** What the policy says at the first number that this article speaks of. */
  Optional<String> says(Article article) {
    return says(number -> index.routes().speaksOf(article.name(), number));
  }

  private Optional<String> says(Predicate<QueryReading.Measured> wanted) {
    return another || !isForThem() ? Optional.empty() : answer(wanted);
  }

  /** All who are asked about must be people that the policy is for. */
  private boolean isForThem() {
    return asked.stream().allMatch(policy::isFor);
  }

  private Optional<String> answer(Predicate<QueryReading.Measured> wanted) {
    return reading.numbers().stream()
        .filter(wanted)
        .map(policy.answers())
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** Why a number that the policy speaks of is not answered for these people. */
  Optional<String> whyNot() {
    return another || isForThem() || answer(number -> true).isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The numbers here are for "
                + words(policy.populations())
                + ". For "
                + words(asked.stream().filter(Predicate.not(policy::isFor)).toList())
                + ", use the policy of their own unit.");
  }

  private static String words(List<Population> people) {
    return String.join(" and ", people.stream().distinct().map(Numbers::word).toList());
  }

  private static String word(Population one) {
    return switch (one) {
      case ADULT -> "adults";
      case CHILD -> "children";
      case NEWBORN -> "newborn babies";
    };
  }
}
