package org.tidemark.load;

import java.util.List;
import org.tidemark.model.Worded;

/** What a field may hold, as far as its file alone can tell. */
public sealed interface Holds {
  /** What needs no more than a name. */
  enum Plain implements Holds {
    /** Text for people. */
    TEXT,
    /** One text, or a list of texts. */
    TEXTS,
    /** A list of one text or more, or one text alone. */
    SOME_TEXTS,
    /** A name that is given here: small letters, digits, hyphens. */
    NAME,
    /** A plain decimal number. */
    NUMBER,
    /** A whole number of 1 or more. */
    COUNT,
    /** Year, month and day. */
    DAY,
    /** Hours and minutes. */
    TIME,
    /** A day and a time of day. */
    MOMENT,
    /** A number, the name of a value, or {@code not-stated}. */
    LIMIT,
    /** Findings and terms, each with what it should be. */
    GIVEN,
    /** The same, over the fields of a list of a tube's record. */
    GIVEN_OF_ITEM,
    /** A list of one condition or more. */
    ALTERNATIVES,
    /** Findings, each with one option or more. */
    SCOPE,
    /** Findings with what was found. */
    FINDINGS,
    /** What was found: an option, a number, a list of options, or a stretch. */
    FOUND,
    /** The lists of a tube's record. */
    RECORD
  }

  /** One of some words. */
  record Word(List<String> words) implements Holds {}

  /** Some of some words, or one alone. */
  record Words(List<String> words) implements Holds {}

  /** Fields of their own. */
  record Group(Part part) implements Holds {}

  /** A list. */
  record ListOf(Holds item) implements Holds {}

  /** Named things, all alike; their names may have to be spelt as names are. */
  record Named(Holds each, boolean spelt) implements Holds {}

  /** One of several. */
  record Either(List<Holds> those) implements Holds {}

  static <E extends Enum<E> & Worded> Holds word(Class<E> type) {
    return new Word(Worded.words(type));
  }

  static Holds word(String... words) {
    return new Word(List.of(words));
  }

  static <E extends Enum<E> & Worded> Holds words(Class<E> type) {
    return new Words(Worded.words(type));
  }

  static Holds group(Part part) {
    return new Group(part);
  }

  static Holds list(Part part) {
    return new ListOf(new Group(part));
  }

  static Holds named(Part part) {
    return new Named(new Group(part), true);
  }

  static Holds entries(Holds each) {
    return new Named(each, false);
  }

  /** This, or a word that says that it is left open. */
  default Holds orNotStated() {
    return or(word("not-stated"));
  }

  default Holds or(Holds other) {
    return new Either(List.of(this, other));
  }
}
