package org.tidemark.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tidemark.source.Located;

/**
 * The words people type and what they mean here. Nothing in it changes an answer at the bedside.
 *
 * @param same groups of phrases of which each also finds the others
 * @param apart groups of words that never stand in for one another
 * @param keep words that keep their endings and are never dropped
 * @param spelling groups of spellings of one word
 * @param light words that carry little meaning beside others
 * @param urgent phrases that put an article for emergencies first
 * @param scope phrases of areas that have an article of their own
 * @param elsewhere phrases of areas that no article covers
 * @param numbers which articles a number of a certain measure leads to
 */
public record Words(
    List<Group> same,
    List<Group> apart,
    List<Located<String>> keep,
    List<Group> spelling,
    List<Located<String>> light,
    List<Signpost> urgent,
    List<Signpost> scope,
    List<Elsewhere> elsewhere,
    List<NumberRoute> numbers) {

  /** No words at all. */
  public static final Words NONE =
      new Words(
          List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
          List.of());

  /**
   * Phrases that belong together.
   *
   * @param phrases at least two
   */
  public record Group(List<Located<String>> phrases) {
    public Group {
      phrases = List.copyOf(phrases);
    }
  }

  /**
   * Phrases that lead to an article.
   *
   * @param article its id
   * @param phrases any of which leads there
   * @param with when not empty, one of these must be there too
   * @param unless when one of these is there too, they do not
   */
  public record Signpost(
      Located<String> article,
      List<Located<String>> phrases,
      List<Located<String>> with,
      List<Located<String>> unless) {
    public Signpost {
      phrases = List.copyOf(phrases);
      with = List.copyOf(with);
      unless = List.copyOf(unless);
    }
  }

  /**
   * Phrases of an area that no article covers.
   *
   * @param phrases any of which means that area
   * @param unless words that mean a tube after all
   */
  public record Elsewhere(List<Located<String>> phrases, List<Located<String>> unless) {
    public Elsewhere {
      phrases = List.copyOf(phrases);
      unless = List.copyOf(unless);
    }
  }

  /**
   * Where a number with a certain unit leads.
   *
   * @param unit the unit, such as {@code ph} or {@code fr}
   * @param within the article for a number that does not pass the limit, and for any number when
   *     there is no limit
   * @param above the article for a number above the limit; empty when there is none
   * @param asked numbers that are limits in some hospital, so that a question about one is a
   *     question about the limit
   */
  public record NumberRoute(
      String unit,
      Located<String> within,
      List<Located<String>> above,
      List<Located<String>> asked) {
    /** The articles it leads to, the one for the limit itself first. */
    Stream<String> articles() {
      return Stream.concat(Stream.of(within), above.stream()).map(Located::value);
    }

    public NumberRoute {
      above = List.copyOf(above);
      asked = List.copyOf(asked);
    }
  }

  public Words {
    same = List.copyOf(same);
    apart = List.copyOf(apart);
    keep = List.copyOf(keep);
    spelling = List.copyOf(spelling);
    light = List.copyOf(light);
    urgent = List.copyOf(urgent);
    scope = List.copyOf(scope);
    elsewhere = List.copyOf(elsewhere);
    numbers = List.copyOf(numbers);
  }

  /** These words and a hospital's own. */
  public Words and(Words more) {
    return new Words(
        joined(same, more.same),
        joined(apart, more.apart),
        joined(keep, more.keep),
        joined(spelling, more.spelling),
        joined(light, more.light),
        joined(urgent, more.urgent),
        joined(scope, more.scope),
        joined(elsewhere, more.elsewhere),
        joined(numbers, more.numbers));
  }

  /** These words without what points at certain articles. */
  Words without(Set<String> articles) {
    return new Words(
        same,
        apart,
        keep,
        spelling,
        light,
        urgent.stream().filter(sign -> !articles.contains(sign.article().value())).toList(),
        scope.stream().filter(sign -> !articles.contains(sign.article().value())).toList(),
        elsewhere,
        numbers.stream().filter(route -> route.articles().noneMatch(articles::contains)).toList());
  }

  private static <T> List<T> joined(List<T> first, List<T> second) {
    List<T> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }
}
