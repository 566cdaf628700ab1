package org.tidemark.load;

import java.util.List;
import org.tidemark.model.UsualAnswers;
import org.tidemark.model.Vocabulary;

/**
 * What a vocabulary file holds.
 *
 * @param vocabulary the findings
 * @param usual what they usually are, for worked cases only
 */
public record VocabularyFile(Vocabulary vocabulary, UsualAnswers usual) {
  /** Whether both were read from the same words, wherever those stand. */
  public boolean saysTheSameAs(VocabularyFile other) {
    return contents(vocabulary).equals(contents(other.vocabulary)) && usual.equals(other.usual);
  }

  private static List<Object> contents(Vocabulary words) {
    return List.of(words.name(), words.edition(), words.findings(), words.lists(), words.events());
  }
}
