package org.tidemark.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Standing;

/**
 * What one part of a file may hold: its fields, in the order in which a file is laid out. Declared
 * once; the readers are held to it, and the schema, the layout and the language page follow from
 * it.
 *
 * @param called what messages call it, such as {@code a rule}
 * @param fields its fields
 * @param limits what must be so between its fields
 * @param findings whether findings of the vocabulary may stand beside them, each with its options
 */
public record Part(String called, List<Field> fields, List<Between> limits, boolean findings) {

  static final String SOURCE_SAYS = "Where it comes from: entries of the bibliography.";

  /** Whether a field must be there. */
  public enum Need {
    /** It must. */
    ALWAYS,
    /** It may be left out. */
    MAYBE,
    /** That hangs on other fields. */
    DEPENDS
  }

  /**
   * A field.
   *
   * @param name its name
   * @param need whether it must be there
   * @param holds what it may hold
   * @param says what it is for, in one line
   */
  public record Field(String name, Need need, Holds holds, String says) {}

  /** Something that must be so between fields. */
  public sealed interface Between {
    /** Exactly one of them is there. */
    record ExactlyOne(List<String> names) implements Between {}

    /** One of them is there, or more. */
    record AtLeastOne(List<String> names) implements Between {}

    /** Where the first is, the second is. */
    record Needs(String name, String other) implements Between {}

    /** Not both are there. */
    record Apart(String name, String other) implements Between {}

    /** Where it is, nothing else is. */
    record Alone(String name) implements Between {}

    /** Where the first holds a word, the second is there. */
    record When(String name, String word, String other) implements Between {}

    /** The second is there only where the first holds a word. */
    record OnlyWhen(String name, String word, String other) implements Between {}
  }

  public Part {
    fields = List.copyOf(fields);
    limits = List.copyOf(limits);
  }

  /** A part without fields; messages call it so. */
  public static Part called(String called) {
    return new Part(called, List.of(), List.of(), false);
  }

  /** And a field that must be there. */
  public Part needs(String name, Holds holds, String says) {
    return with(new Field(name, Need.ALWAYS, holds, says));
  }

  /** And a field that may be left out. */
  public Part may(String name, Holds holds, String says) {
    return with(new Field(name, Need.MAYBE, holds, says));
  }

  /** And a field that must be there, or must not, because of others. */
  public Part depends(String name, Holds holds, String says) {
    return with(new Field(name, Need.DEPENDS, holds, says));
  }

  private Part with(Field field) {
    List<Field> all = new ArrayList<>(fields);
    all.add(field);
    return new Part(called, all, limits, findings);
  }

  /** And how it is backed, which stands at much of what a policy says. */
  static Part sourced(Part part) {
    return part.depends(
            "standing", Holds.word(Standing.class), "How well it is backed. A floor must say.")
        .may("source", Holds.Plain.TEXTS, SOURCE_SAYS);
  }

  /** And something between its fields. */
  public Part where(Between... more) {
    List<Between> all = new ArrayList<>(limits);
    all.addAll(List.of(more));
    return new Part(called, fields, all, findings);
  }

  /** And findings beside its fields. */
  public Part andFindings() {
    return new Part(called, fields, limits, true);
  }

  public Optional<Field> field(String name) {
    return fields.stream().filter(f -> f.name().equals(name)).findFirst();
  }

  /** The names of its fields, in their order. */
  public List<String> names() {
    return fields.stream().map(Field::name).toList();
  }

  /**
   * A reader that asks for a field which is not declared, or never asks for one that is, would
   * leave the schema, the layout and the language page behind.
   */
  void heldTo(Set<String> asked) {
    List<String> unknown = asked.stream().filter(name -> field(name).isEmpty()).toList();
    List<String> unread =
        fields.stream()
            .filter(f -> f.need() != Need.DEPENDS && !asked.contains(f.name()))
            .map(Field::name)
            .toList();
    if (!unknown.isEmpty() || !unread.isEmpty()) {
      throw new IllegalStateException(
          called
              + ": the reader asks for "
              + unknown
              + ", which are not declared, and not for "
              + unread
              + ", which are. Add them to this part in org.tidemark.load (Language, RuleParts, CareParts or OtherFiles; for worked cases:"
              + " org.tidemark.trial.CaseLanguage), with what they hold and one line on what they are for;"
              + " see 'The language, declared once' in DEVELOPERS.md.");
    }
  }
}
