package org.tidemark.load;

import static org.tidemark.load.Holds.Plain.ALTERNATIVES;
import static org.tidemark.load.Holds.Plain.COUNT;
import static org.tidemark.load.Holds.Plain.GIVEN;
import static org.tidemark.load.Holds.Plain.GIVEN_OF_ITEM;
import static org.tidemark.load.Holds.Plain.LIMIT;
import static org.tidemark.load.Holds.Plain.NAME;
import static org.tidemark.load.Holds.Plain.NUMBER;
import static org.tidemark.load.Holds.Plain.SOME_TEXTS;
import static org.tidemark.load.Holds.Plain.TEXT;
import static org.tidemark.load.Holds.Plain.TEXTS;
import static org.tidemark.load.Holds.Plain.TIME;

import java.util.List;
import org.tidemark.load.Part.Between;
import org.tidemark.load.Part.Between.Alone;
import org.tidemark.load.Part.Between.Apart;
import org.tidemark.load.Part.Between.AtLeastOne;
import org.tidemark.load.Part.Between.ExactlyOne;
import org.tidemark.load.Part.Between.Needs;
import org.tidemark.model.Axis;
import org.tidemark.model.Effect;
import org.tidemark.model.Outcome;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Running;
import org.tidemark.model.TubeOrder;

/** The parts of a policy that its answers follow from. */
final class RuleParts {
  private static final List<String> ENDS = List.of("is", "at-least", "above", "at-most", "below");
  private static final Between[] ENDS_APART = {
    new Apart("at-least", "above"),
    new Apart("at-most", "below"),
    new Apart("is", "at-least"),
    new Apart("is", "above"),
    new Apart("is", "at-most"),
    new Apart("is", "below")
  };

  static final Part PLAN_MAY_SET =
      Part.called("`plan-may-set` of")
          .depends("at-least", NUMBER, "The lowest that one patient's plan may set.")
          .depends("at-most", NUMBER, "The highest that it may set.")
          .needs("by", TEXT, "The role that may set it.")
          .where(new AtLeastOne(List.of("at-least", "at-most")));

  static final Part VALUE =
      Part.sourced(
          Part.called("the value")
              .depends("is", NUMBER.orNotStated(), "The number; or not-stated.")
              .depends("at-least", NUMBER, "The lower end of a range; it belongs to the range.")
              .depends("at-most", NUMBER, "The upper end of a range; it belongs to the range.")
              .depends("from", TIME, "When a stretch of the day begins.")
              .depends("until", TIME, "When it ends; that minute no longer belongs to it.")
              .depends("unit", TEXT, "The unit of the number or the range.")
              .may(
                  "stricter",
                  Holds.word(PolicyValue.Stricter.class),
                  "Which way a layer above may move it.")
              .depends(
                  "plan-may-set",
                  Holds.group(PLAN_MAY_SET),
                  "What one patient's plan may set, and who sets it.")
              .may(
                  "how-far-off",
                  TEXT,
                  "The finding whose readings may be off by the number, to either side.")
              .may("was", NUMBER, "The number of the edition before.")
              .may("why", TEXT, "Why this number.")
              .where(
                  new ExactlyOne(List.of("is", "at-least", "from")),
                  new Needs("at-least", "at-most"),
                  new Needs("at-most", "at-least"),
                  new Needs("from", "until"),
                  new Needs("until", "from"),
                  new Needs("is", "unit"),
                  new Needs("at-least", "unit"),
                  new Needs("how-far-off", "is"),
                  new Apart("from", "unit")));

  static final Part BAND =
      Part.called("the band")
          .needs("of", TEXT, "The measured finding that it is a stretch of.")
          .may("is", LIMIT, "One reading alone.")
          .may("at-least", LIMIT, "The lower end; it belongs to the band.")
          .may("above", LIMIT, "The lower end; it does not belong to the band.")
          .may("at-most", LIMIT, "The upper end; it belongs to the band.")
          .may("below", LIMIT, "The upper end; it does not belong to the band.")
          .may("inside", TEXT, "A band that this one must lie within, whatever the values are.")
          .may("straddles", TEXT, "A band whose edge this one must lie across.")
          .may("not-stated", TEXT, "What the source leaves open about it.")
          .may("source", TEXTS, Part.SOURCE_SAYS)
          .where(new AtLeastOne(ENDS), new Apart("inside", "straddles"))
          .where(ENDS_APART);

  static final Part BARRED =
      Part.sourced(
          Part.called("a barred test")
              .needs("tests", SOME_TEXTS, "Findings of the vocabulary that must never count."));

  static final Part SOME_OF =
      Part.called("`some-of`")
          .needs("how-many", COUNT, "How many of the parts must hold, whichever.")
          .needs("of", ALTERNATIVES, "The parts.");

  static final Part TERM =
      Part.sourced(
          Part.called("the term")
              .depends("any-of", ALTERNATIVES, "It holds when one of these does.")
              .may("some-of", Holds.group(SOME_OF), "It holds when so many of these do.")
              .where(new AtLeastOne(List.of("any-of", "some-of"))));

  static final Part READING =
      Part.called("the condition on")
          .depends("is", LIMIT, "One reading alone.")
          .depends("at-least", LIMIT, "The lower end; it belongs to the band.")
          .depends("above", LIMIT, "The lower end; it does not belong to the band.")
          .depends("at-most", LIMIT, "The upper end; it belongs to the band.")
          .depends("below", LIMIT, "The upper end; it does not belong to the band.")
          .depends("other-than", TEXT, "Anything recorded but this.")
          .where(
              new AtLeastOne(List.of("is", "at-least", "above", "at-most", "below", "other-than")),
              new Alone("other-than"))
          .where(ENDS_APART);

  static final Part RULE =
      Part.sourced(
          Part.called("a rule")
              .needs("rule", NAME, "Its name, once in a policy.")
              .needs("effect", Holds.word(Effect.class), "What it does when it fires.")
              .needs("about", Holds.word(Axis.class), "Which side of the question it speaks of.")
              .needs("given", GIVEN, "When it fires: all of these.")
              .may("which", TEXTS, "The allow rules that a set-aside rule takes the force from.")
              .may("because", TEXT, "Why, to the person at the bedside.")
              .may("does-not-rule-out", TEXT, "What could still be wrong when it allows.")
              .may("next", TEXTS, "What to do next, one action a step.")
              .may("done-by", TEXT, "Who does that: a role, told before each step.")
              .may("running", Holds.word(Running.class), "What happens to a feed that is running.")
              .may("tube", Holds.word(TubeOrder.class), "What happens to the tube.")
              .may("contact", TEXT, "Whom to call: one of the contacts, or not-stated.")
              .may("wins-over", TEXTS, "Rules whose orders on the tube or the feed it overrules.")
              .where(new Needs("done-by", "next")));

  static final Part WORDS =
      Part.called("`words`")
          .needs("proceed", TEXT, "What the answer proceed is called.")
          .needs("hold", TEXT, "What the answer hold is called.")
          .needs("escalate", TEXT, "What the answer escalate is called.");

  static final Part STATEMENT =
      Part.sourced(
          Part.called("a statement of what is always so")
              .needs("statement", NAME, "Its name.")
              .needs("question", TEXT, "The question that it speaks of.")
              .needs("given", GIVEN, "In which cases.")
              .needs(
                  "answer",
                  Holds.word(Outcome.class),
                  "The answer that is always, or never, given.")
              .needs("says", TEXT, "The statement, in a sentence.")
              .may("because", TEXT, "Why it must be so; needed where no source is given.")
              .where(new AtLeastOne(List.of("because", "source"))));

  static final Part COUNTED_BY =
      Part.sourced(
          Part.called("an item of")
              .depends("when", GIVEN_OF_ITEM, "Which readings do not count.")
              .depends(
                  "all-of", GIVEN_OF_ITEM, "What an X-ray must show to count as in the stomach.")
              .needs("because", TEXT, "Why.")
              .where(new ExactlyOne(List.of("when", "all-of"))));

  static final Part REPEATED =
      Part.sourced(
          Part.called("an item of `repeats`")
              .needs("too-high", GIVEN_OF_ITEM, "Readings after which another is made.")
              .needs("wait", TEXT, "The value that says how long after."));

  static final Part MOVED =
      Part.sourced(
          Part.called("an item of `moved`")
              .needs("against", TEXT, "Which length the tube is held against.")
              .needs("when", GIVEN_OF_ITEM, "When it has moved."));

  static final Part COUNTED =
      Part.called("counted")
          .depends("stomach-needs", Holds.list(COUNTED_BY), "Of X-rays: what each must show.")
          .depends("repeats", Holds.list(REPEATED), "Of pH readings: which are made again.")
          .depends("moved", Holds.list(MOVED), "Of lengths: when the tube has moved.")
          .depends("drop", Holds.list(COUNTED_BY), "Of pH readings: which do not count.");

  static final Part QUESTION =
      Part.called("the question")
          .depends("after", TEXT, "The question that must be answered with proceed before it.")
          .may("asks", TEXT, "The question, as it is put.")
          .may("words", Holds.group(WORDS), "What the three answers are called.")
          .may("speaks-of", axes(), "The sides that rules must speak of before anything proceeds.")
          .may("left-to-hospital", axes(), "Those that a floor leaves to the layer on it.")
          .may("rules", Holds.list(RULE).orNotStated(), "Its rules; their order never matters.");

  private RuleParts() {}

  private static Holds axes() {
    return Holds.words(Axis.class).or(Holds.word("all"));
  }
}
