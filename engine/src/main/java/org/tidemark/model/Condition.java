package org.tidemark.model;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * When a rule holds. Each part compares one finding with constants, so that every question over all
 * findings is finite.
 */
public sealed interface Condition {

  /** Answers with one method a case; a new case breaks every reader at compile time. */
  <R> R accept(Visitor<R> visitor);

  /**
   * All of them; with none it always holds.
   *
   * @param parts the parts
   */
  record AllOf(List<Condition> parts) implements Condition {
    public AllOf {
      parts = List.copyOf(parts);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.allOf(this);
    }
  }

  /**
   * At least one of them.
   *
   * @param alternatives the alternatives
   */
  record AnyOf(List<Condition> alternatives) implements Condition {
    public AnyOf {
      alternatives = List.copyOf(alternatives);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.anyOf(this);
    }
  }

  /**
   * So many of them, whichever.
   *
   * @param howMany how many must hold at least
   * @param parts what is counted
   */
  record SomeOf(int howMany, List<Condition> parts) implements Condition {
    public SomeOf {
      parts = List.copyOf(parts);
      if (howMany < 1 || howMany > parts.size()) {
        throw new IllegalArgumentException(howMany + " of " + parts.size());
      }
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.someOf(this);
    }
  }

  /**
   * The finding is one of these options.
   *
   * @param finding the finding's name
   * @param options option names
   */
  record Options(String finding, Set<String> options) implements Condition {
    public Options {
      options = Collections.unmodifiableSet(new TreeSet<>(options));
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.options(this);
    }
  }

  /**
   * The finding is recorded, applies, and is not this option (or, for a measure, not this number).
   *
   * @param finding the finding's name
   * @param excluded the value that it is not
   */
  record OtherThan(String finding, Value excluded) implements Condition {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.otherThan(this);
    }
  }

  /**
   * The measure lies in a stretch written in place.
   *
   * @param finding the finding's name
   * @param band the stretch
   */
  record InBand(String finding, Band band) implements Condition {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.inBand(this);
    }
  }

  /**
   * The measure lies in a band of the policy.
   *
   * @param finding the finding's name
   * @param band the band's name
   */
  record InNamedBand(String finding, String band) implements Condition {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.inNamedBand(this);
    }
  }

  /**
   * A term of the policy holds, or is recorded not to hold.
   *
   * @param term the term's name
   * @param holds yes or no
   */
  record TermIs(String term, boolean holds) implements Condition {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.termIs(this);
    }
  }

  /**
   * One method a case, and no defaults.
   *
   * @param <R> the answer
   */
  interface Visitor<R> {
    R allOf(AllOf all);

    R anyOf(AnyOf any);

    R someOf(SomeOf some);

    R options(Options options);

    R otherThan(OtherThan other);

    R inBand(InBand in);

    R inNamedBand(InNamedBand in);

    R termIs(TermIs term);
  }
}
