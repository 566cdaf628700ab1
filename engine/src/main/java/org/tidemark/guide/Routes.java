package org.tidemark.guide;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Moves articles up for what words alone do not say: an emergency, an area, a number. */
final class Routes {
  private static final double NUMBER_COUNTS = 0.6;
  private static final double SECOND_COUNTS = 0.35;

  private final Words words;
  private final Phrases phrases;

  Routes(Words words, Phrases phrases) {
    this.words = words;
    this.phrases = phrases;
  }

  /** The articles that must come first, in order, each with the reason. */
  Map<String, String> first(List<String> query) {
    Map<String, String> first = new LinkedHashMap<>();
    for (Words.Signpost sign : words.urgent()) {
      if (phrases.leads(sign, query)) {
        first.putIfAbsent(
            sign.article().value(), "put first, since these words describe an emergency");
      }
    }
    for (Words.Signpost sign : words.scope()) {
      if (phrases.leads(sign, query)) {
        first.putIfAbsent(
            sign.article().value(), "put first, since these words name an area with its own rules");
      }
    }
    return first;
  }

  /** How much more an article counts, in shares of the best score, for the numbers in a query. */
  Map<String, Double> numbers(List<QueryReading.Measured> numbers, Optional<BigDecimal> cutOff) {
    Map<String, Double> more = new LinkedHashMap<>();
    for (QueryReading.Measured number : numbers) {
      for (Words.NumberRoute route : words.numbers()) {
        if (route.unit().equals(number.unit())) {
          Optional<BigDecimal> limit =
              route.unit().equals(NumberReader.PH) ? cutOff : Optional.empty();
          add(more, route, number.value(), limit);
        }
      }
    }
    return more;
  }

  /** Whether an article is one of those that a number of this unit leads to. */
  boolean speaksOf(String article, QueryReading.Measured number) {
    return words.numbers().stream()
        .filter(route -> route.unit().equals(number.unit()))
        .anyMatch(route -> route.articles().anyMatch(article::equals));
  }

  private static void add(
      Map<String, Double> more,
      Words.NumberRoute route,
      BigDecimal number,
      Optional<BigDecimal> limit) {
    List<String> articles = route.articles().toList();
    boolean over = !isLimitSomewhere(route, number) && limit.isPresent() && over(number, limit);
    String first = articles.get(over ? articles.size() - 1 : 0);
    more.merge(first, NUMBER_COUNTS, Math::max);
    if (limit.isEmpty() || over(number, limit)) {
      articles.forEach(article -> more.merge(article, SECOND_COUNTS, Math::max));
    }
  }

  private static boolean over(BigDecimal number, Optional<BigDecimal> limit) {
    return limit.isPresent() && number.compareTo(limit.get()) > 0;
  }

  private static boolean isLimitSomewhere(Words.NumberRoute route, BigDecimal number) {
    return route.asked().stream()
        .anyMatch(asked -> number.compareTo(new BigDecimal(asked.value())) == 0);
  }

  /** Whether a query is about something that no article covers. */
  boolean elsewhere(List<String> query) {
    return words.elsewhere().stream()
        .anyMatch(
            area -> phrases.anyIn(query, area.phrases()) && !phrases.anyIn(query, area.unless()));
  }
}
