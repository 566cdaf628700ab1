package org.tidemark.load;

import static org.tidemark.load.Holds.Plain.COUNT;
import static org.tidemark.load.Holds.Plain.FINDINGS;
import static org.tidemark.load.Holds.Plain.FOUND;
import static org.tidemark.load.Holds.Plain.MOMENT;
import static org.tidemark.load.Holds.Plain.NUMBER;
import static org.tidemark.load.Holds.Plain.RECORD;
import static org.tidemark.load.Holds.Plain.SCOPE;
import static org.tidemark.load.Holds.Plain.SOME_TEXTS;
import static org.tidemark.load.Holds.Plain.TEXT;
import static org.tidemark.load.Holds.Plain.TEXTS;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.load.Part.Between.ExactlyOne;
import org.tidemark.load.Part.Between.Needs;
import org.tidemark.load.Part.Between.OnlyWhen;
import org.tidemark.load.Part.Between.When;
import org.tidemark.model.EventKind;
import org.tidemark.model.FeedMode;
import org.tidemark.model.ListKind;
import org.tidemark.model.Standing;

/**
 * The parts of the files beside policies: vocabularies, bibliographies and findings. Declared as
 * those of {@link Language} are.
 */
public final class OtherFiles {
  /** What the cards and the pages of other rooms are made of; no editor needs to know them. */
  private static final Set<String> NOT_DECLARED =
      Set.of(
          "the card",
          "the pause",
          "the stop",
          "the line",
          "the sign-off sheet's file",
          "a table",
          "the catalogue");

  static final Part PUBLISHED =
      Part.called("`published-limits`")
          .needs("at-least", NUMBER, "The lowest limit that was read.")
          .needs("at-most", NUMBER, "The highest limit that was read.")
          .needs("source", SOME_TEXTS, "Where these two were read: entries of the bibliography.");

  static final Part FINDING =
      domain(
              Part.called("the finding")
                  .needs("asks", TEXT, "What the nurse reads.")
                  .may(
                      "short", TEXT, "What lists of findings call it, where the question is long."))
          .needs(
              "worse",
              Holds.word("higher", "lower", "neither").or(new Holds.ListOf(TEXT)),
              "Which way it gets more worrying; or its options, from the least to the most.")
          .may("applies", SCOPE, "The findings that it hangs on.")
          .may("when-closed", TEXT, "The option that it has when it does not apply.")
          .may("barred", TEXTS, "Options that a policy can say must never count.")
          .depends("barred-because", TEXT, "Why they do not count.")
          .depends("barred-words", TEXTS, "How people call them, to be looked for in texts.")
          .needs("ask", NUMBER, "Its place in the order of asking.")
          .may("usual", TEXT, "What it usually is; worked cases alone may use it.")
          .may("renew", TEXT, "How long an answer stays good.")
          .may("how", TEXT, "How to find it out.")
          .may(
              "published-limits",
              Holds.group(PUBLISHED),
              "Of a measure: between which numbers the limits lie that were read.")
          .where(
              new Needs("barred", "barred-because"),
              new Needs("barred-because", "barred"),
              new OnlyWhen("kind", "measure", "published-limits"));

  static final Part FIELD =
      domain(Part.called("the field").depends("like", TEXT, "The finding whose values it takes."))
          .where(new ExactlyOne(List.of("like", "kind")));

  static final Part LIST =
      Part.called("the list")
          .needs("one", TEXT, "What one item is called.")
          .may("times", TEXTS, "Times that an item has beside `at`.")
          .needs("fields", Holds.named(FIELD), "What is written of each item.");

  static final Part EVENT =
      Part.called("the event")
          .needs("says", TEXT, "What happened, in words.")
          .needs("means", Holds.word(EventKind.Means.class), "What it is to the tube.")
          .may("use", TEXT, "What goes down the tube.")
          .may("feed-mode", Holds.word(FeedMode.class), "How it goes down.")
          .where(
              new When("means", "use", "use"),
              new When("means", "use-begins", "use"),
              new When("means", "use-pauses", "use"),
              new When("means", "use-ends", "use"));

  static final Part VOCABULARY =
      Part.called("a vocabulary")
          .needs("vocabulary", TEXT, "Its name.")
          .needs("edition", COUNT, "Its edition.")
          .needs("findings", Holds.named(FINDING), "What can be seen, measured or read.")
          .may("lists", Holds.named(LIST), "What a tube's record may hold more than once.")
          .may(
              "events",
              new Holds.Named(TEXT.or(Holds.group(EVENT)), true),
              "What can happen to a tube.");

  static final Part FACT =
      Part.called("the entry")
          .needs("says", TEXT, "What the publication says, in our words.")
          .may("value", TEXT, "Its number, if it has one.")
          .may("for", TEXT, "Whom it is about.")
          .needs("publication", TEXT, "Organisation and title.")
          .may("year", TEXT, "When it was published.")
          .needs("standing", Holds.word(Standing.class), "How well it is backed.")
          .may("note", TEXT, "What a reader should know.");

  static final Part BIBLIOGRAPHY =
      Part.called("a bibliography")
          .needs("bibliography", TEXT, "Its name.")
          .needs("edition", COUNT, "Its edition.")
          .depends("alerts", TEXTS, "Entries that are alerts, which a policy should answer.")
          .needs("facts", Holds.entries(Holds.group(FACT)), "Its entries.");

  static final Part STRETCH =
      Part.called("a stretch")
          .needs("at-least", NUMBER, "The lowest that it may be.")
          .needs("at-most", NUMBER, "The highest that it may be.");

  static final Part HAPPENED =
      Part.called("an event")
          .needs("event", TEXT, "What happened, as the vocabulary's events call it.")
          .depends("at", MOMENT, "When.")
          .depends("not-before", MOMENT, "The earliest that it can have been.")
          .depends("not-after", MOMENT, "The latest that it can have been.");

  static final Part ASKED =
      Part.called("a file of findings")
          .may("question", TEXT, "The question that is asked.")
          .depends("findings", FINDINGS, "What is known.")
          .may("record", RECORD, "What was written of the tube.");

  private static final Map<String, Part> PARTS = parts();

  private OtherFiles() {}

  private static Map<String, Part> parts() {
    Map<String, Part> parts = new LinkedHashMap<>();
    List.of(
            VOCABULARY,
            FINDING,
            PUBLISHED,
            LIST,
            FIELD,
            EVENT,
            BIBLIOGRAPHY,
            FACT,
            STRETCH,
            HAPPENED,
            ASKED)
        .forEach(part -> parts.put(part.called(), part));
    return parts;
  }

  /** All of these parts. */
  public static List<Part> all() {
    return List.copyOf(PARTS.values());
  }

  static Optional<Part> part(String called) {
    return Optional.ofNullable(PARTS.get(called));
  }

  /** Whether a part belongs to a file that is no part of the language. */
  static boolean isElsewhere(String called) {
    return NOT_DECLARED.contains(called);
  }

  /** A stretch of readings. */
  public static Part stretch() {
    return STRETCH;
  }

  /** An event of a tube's record. */
  public static Part happened() {
    return HAPPENED;
  }

  /** A file that holds a vocabulary. */
  public static Part vocabulary() {
    return VOCABULARY;
  }

  /** A file that holds a bibliography. */
  public static Part bibliography() {
    return BIBLIOGRAPHY;
  }

  /** A file that holds findings, and what is asked about them. */
  public static Part asked() {
    return ASKED;
  }

  /** An item of a list that a vocabulary names. */
  public static Part item(ListKind kind) {
    Part part = Part.called("an item of").may("at", MOMENT, "When.");
    for (String time : kind.times()) {
      part = part.may(time, MOMENT, "When.");
    }
    for (String field : kind.fields().keySet()) {
      part = part.may(field, FOUND, "What was found.");
    }
    return part;
  }

  /** What the values of a finding, or of a field of a list, are. */
  private static Part domain(Part part) {
    return part.depends(
            "kind", Holds.word("choice", "yes-no", "measure"), "What sort of values it has.")
        .depends(
            "options", new Holds.Named(TEXT, true), "Of a choice: its options, with their words.")
        .depends("unit", TEXT, "Of a measure: its unit.")
        .depends("range", new Holds.ListOf(NUMBER), "Of a measure: the lowest and the highest.")
        .depends("step", NUMBER, "Of a measure: the smallest difference.")
        .depends(
            "in-place-of-a-number",
            Holds.entries(TEXT),
            "Of a measure: words that may stand for a reading, such as not-recorded.")
        .where(
            new When("kind", "choice", "options"),
            new OnlyWhen("kind", "choice", "options"),
            new When("kind", "measure", "unit"),
            new OnlyWhen("kind", "measure", "unit"),
            new When("kind", "measure", "range"),
            new OnlyWhen("kind", "measure", "range"),
            new When("kind", "measure", "step"),
            new OnlyWhen("kind", "measure", "step"),
            new OnlyWhen("kind", "measure", "in-place-of-a-number"));
  }
}
