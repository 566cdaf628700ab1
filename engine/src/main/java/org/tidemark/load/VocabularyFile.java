package org.tidemark.load;

import org.tidemark.model.UsualAnswers;
import org.tidemark.model.Vocabulary;

/**
 * What a vocabulary file holds.
 *
 * @param vocabulary the findings
 * @param usual what they usually are, for worked cases only
 */
public record VocabularyFile(Vocabulary vocabulary, UsualAnswers usual) {}
