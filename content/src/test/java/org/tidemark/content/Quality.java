package org.tidemark.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * How well a search answers judged queries. nDCG with gains 2^g - 1 and a discount of log2(rank +
 * 1) is the measure of Burges and others, Learning to rank using gradient descent, 2005, as used
 * since; formula from memory.
 *
 * @param queries how many queries were tried
 * @param ndcg mean nDCG of the first five
 * @param first share of queries with a topic of grade 2 first
 * @param inFive share of queries with a topic of grade 2 among the first five
 * @param avoided how often a topic came first that must not
 * @param misses what went wrong, one line each
 */
record Quality(
    int queries, double ndcg, double first, double inFive, int avoided, List<String> misses) {
  static final int DEPTH = 5;

  static Quality of(List<JudgedQuery> queries, Function<String, List<String>> search) {
    double ndcg = 0;
    int first = 0;
    int inFive = 0;
    int avoided = 0;
    List<String> misses = new ArrayList<>();
    for (JudgedQuery query : queries) {
      List<String> found = found(query, search);
      ndcg += ndcg(query, found);
      boolean isFirst = query.grade(found.get(0)) == 2;
      first += isFirst ? 1 : 0;
      inFive += found.stream().anyMatch(topic -> query.grade(topic) == 2) ? 1 : 0;
      avoided += query.avoid().contains(found.get(0)) ? 1 : 0;
      if (!isFirst) {
        misses.add(
            String.format(
                Locale.ROOT,
                "%s %-42s nDCG %.2f wants %s got %s%s",
                query.id(),
                query.text(),
                ndcg(query, found),
                query.grades(),
                found,
                query.avoid().contains(found.get(0)) ? " AVOID" : ""));
      }
    }
    int n = queries.size();
    return new Quality(
        n, ndcg / n, (double) first / n, (double) inFive / n, avoided, List.copyOf(misses));
  }

  /** What was found; an empty answer is the topic `none`. */
  private static List<String> found(JudgedQuery query, Function<String, List<String>> search) {
    List<String> found = search.apply(query.text());
    return found.isEmpty() ? List.of(JudgedQuery.NONE) : found;
  }

  static double ndcg(JudgedQuery query, List<String> found) {
    List<Integer> gains = found.stream().map(query::grade).toList();
    List<Integer> ideal =
        query.grades().values().stream().sorted(Comparator.reverseOrder()).toList();
    return dcg(gains) / dcg(ideal);
  }

  private static double dcg(List<Integer> grades) {
    double sum = 0;
    for (int i = 0; i < Math.min(DEPTH, grades.size()); i++) {
      sum += (Math.pow(2, grades.get(i)) - 1) / (Math.log(i + 2) / Math.log(2));
    }
    return sum;
  }

  String row(String name) {
    return String.format(
        Locale.ROOT,
        "%-34s %4d queries  nDCG@5 %.3f  first %5.1f %%  in five %5.1f %%  avoided %d",
        name,
        queries,
        ndcg,
        100 * first,
        100 * inFive,
        avoided);
  }
}
