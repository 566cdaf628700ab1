package org.tidemark.guide;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.source.Located;

/**
 * One topic of guidance. Its body is still a template: the values are those of no policy yet.
 *
 * @param id the topic's short name
 * @param title what a reader sees first
 * @param answers questions that it answers, in the words of those who ask
 * @param stage when it is wanted
 * @param populations whom it speaks of
 * @param tubes which tubes it speaks of
 * @param actNow whether minutes count
 * @param pointer whether it only points elsewhere
 * @param seeAlso other articles
 * @param sources ids of the bibliography
 * @param reviewBy when somebody must read it again
 * @param body Markdown with values to fill in
 * @param origin who wrote it: the name of the collection that it came from
 */
public record Article(
    Located<String> id,
    String title,
    List<Located<String>> answers,
    Stage stage,
    Set<Population> populations,
    Set<TubeKind> tubes,
    boolean actNow,
    boolean pointer,
    List<Located<String>> seeAlso,
    List<Located<String>> sources,
    Optional<LocalDate> reviewBy,
    Located<String> body,
    String origin) {
  public Article {
    answers = List.copyOf(answers);
    populations = Set.copyOf(populations);
    tubes = Set.copyOf(tubes);
    seeAlso = List.copyOf(seeAlso);
    sources = List.copyOf(sources);
  }

  /** The short name as text. */
  public String name() {
    return id.value();
  }

  /** The same with other neighbours. */
  Article seeAlso(List<Located<String>> others) {
    return new Article(
        id,
        title,
        answers,
        stage,
        populations,
        tubes,
        actNow,
        pointer,
        others,
        sources,
        reviewBy,
        body,
        origin);
  }
}
