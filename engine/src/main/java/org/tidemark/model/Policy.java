package org.tidemark.model;

import java.util.List;

/**
 * One policy file: a layer, on its own or on top of another.
 *
 * @param header what it is
 * @param values its numbers, each written once
 * @param bands its stretches of measures
 * @param barred tests that must not count, with the source of the ban
 * @param terms its yes-or-no findings made of others
 * @param questions what it decides
 * @param care what it says beside its rules
 * @param counts what counts of a tube's record
 * @param notStated what it leaves open, in words
 * @param declared what it declares about itself
 * @param ownFindings findings that it asks beside those of the vocabulary
 */
public record Policy(
    Header header,
    List<PolicyValue> values,
    List<NamedBand> bands,
    List<Barred> barred,
    List<Term> terms,
    List<Question> questions,
    Care care,
    Counts counts,
    List<String> notStated,
    Declared declared,
    List<Finding> ownFindings) {
  /** A policy that says nothing of a record and asks no findings of its own. */
  public Policy(
      Header header,
      List<PolicyValue> values,
      List<NamedBand> bands,
      List<Barred> barred,
      List<Term> terms,
      List<Question> questions,
      Care care,
      List<String> notStated,
      Declared declared) {
    this(
        header,
        values,
        bands,
        barred,
        terms,
        questions,
        care,
        Counts.NONE,
        notStated,
        declared,
        List.of());
  }

  public Policy {
    values = List.copyOf(values);
    bands = List.copyOf(bands);
    barred = List.copyOf(barred);
    terms = List.copyOf(terms);
    questions = List.copyOf(questions);
    notStated = List.copyOf(notStated);
    ownFindings = List.copyOf(ownFindings);
  }

  public String name() {
    return header.name();
  }
}
