package org.tidemark.load;

import static org.tidemark.load.Holds.Plain.GIVEN;
import static org.tidemark.load.Holds.Plain.NAME;
import static org.tidemark.load.Holds.Plain.SCOPE;
import static org.tidemark.load.Holds.Plain.SOME_TEXTS;
import static org.tidemark.load.Holds.Plain.TEXT;
import static org.tidemark.load.Holds.Plain.TEXTS;
import static org.tidemark.load.Holds.Plain.TIME;

import java.util.List;
import org.tidemark.load.Part.Between.Apart;
import org.tidemark.load.Part.Between.AtLeastOne;
import org.tidemark.load.Part.Between.ExactlyOne;
import org.tidemark.load.Part.Between.OnlyWhen;
import org.tidemark.load.Part.Between.When;
import org.tidemark.model.FeedMode;

/** The parts of a policy beside its rules. */
final class CareParts {
  static final Part LAPSE =
      Part.sourced(
          Part.called("a lapse")
              .needs("lapse", NAME, "Its name.")
              .needs("when", TEXT, "When a check no longer counts, in a sentence.")
              .may("on", SOME_TEXTS, "Events of the vocabulary that set it off.")
              .may("every", TEXT, "The value that it goes by, or each-shift.")
              .depends("shifts", SOME_TEXTS, "The stretches of the day, with each-shift.")
              .may(
                  "use", SOME_TEXTS, "What goes down the tube, as the vocabulary's events call it.")
              .may("feed-mode", Holds.words(FeedMode.class), "Narrows the clock or the use.")
              .may("seen", GIVEN, "What must be seen.")
              .may("by-hand", TEXT, "Why a person judges it.")
              .may(
                  "does",
                  Holds.word("lapse", "suspend", "end"),
                  "What it does; lapse if not given.")
              .may("until", SOME_TEXTS, "Events that end a suspension.")
              .where(
                  new AtLeastOne(List.of("on", "every", "use", "seen", "by-hand")),
                  new When("every", "each-shift", "shifts"),
                  new OnlyWhen("every", "each-shift", "shifts"),
                  new When("does", "suspend", "until"),
                  new OnlyWhen("does", "suspend", "until"),
                  new When("does", "suspend", "on"),
                  new When("does", "end", "on")));

  static final Part STEP_ALTERNATIVE =
      Part.called("one of the steps")
          .needs("step", NAME, "Its name.")
          .may("do", TEXT, "What to do, unless a layer below says it.");

  static final Part STEP =
      Part.sourced(
          Part.called("a step")
              .depends("step", NAME, "Its name.")
              .depends("do", TEXT, "What to do, unless a layer below says it.")
              .depends("either", Holds.list(STEP_ALTERNATIVE), "Steps of which one is taken.")
              .where(new ExactlyOne(List.of("step", "either")), new Apart("either", "do")));

  static final Part BARRED_STEP =
      Part.sourced(
          Part.called("a barred step")
              .needs("step", NAME, "Its name.")
              .needs("never", TEXT, "What is never done, in a sentence."));

  static final Part FALLBACK =
      Part.sourced(
          Part.called("`fallback`")
              .needs("after", GIVEN, "What was found before it.")
              .may(
                  "in-order",
                  Holds.word("yes", "no", "not-stated"),
                  "Whether the order of the steps is binding.")
              .may("steps", Holds.list(STEP).orNotStated(), "What is tried.")
              .may("barred-steps", Holds.list(BARRED_STEP).orNotStated(), "What is never tried.")
              .may("then", TEXTS, "What to do when all of it was tried.")
              .may("contact", TEXT, "Whom to call: one of the contacts, or not-stated."));

  static final Part HOURS =
      Part.called("`hours`")
          .needs("from", TIME, "From when.")
          .needs("until", TIME, "Until when; that minute no longer belongs to it.")
          .depends("days", SOME_TEXTS, "On which days of the week; every day if not given.");

  static final Part CONTACT =
      Part.called("the contact")
          .needs("who", TEXT, "Who it is: a role, never a person's name.")
          .depends("when", TEXT, "When they can be reached, in words.")
          .depends("hours", Holds.group(HOURS), "When they can be reached, as data.")
          .depends("number", TEXT, "The number to call.")
          .may("else", TEXT, "The contact to call instead.")
          .where(new AtLeastOne(List.of("when", "hours")));

  static final Part TRAY =
      Part.sourced(
          Part.called("a tray")
              .needs("tray", NAME, "Its name.")
              .needs("title", TEXT, "Which tube it is for.")
              .depends("for", SCOPE, "Whom it is for, when not for all.")
              .needs("items", TEXTS, "What lies on it.")
              .may("never", TEXTS, "What must not lie on it."));

  static final Part RECORD =
      Part.sourced(
          Part.called("the record")
              .may("fields", TEXTS, "What is written down.")
              .may("when-asked", SOME_TEXTS, "Questions whose answers say it."));

  private CareParts() {}
}
