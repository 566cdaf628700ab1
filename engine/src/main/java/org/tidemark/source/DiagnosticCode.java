package org.tidemark.source;

import java.util.Locale;

/** Every kind of thing that a reading can say. The sentence is what the documentation prints. */
public enum DiagnosticCode {
  // raw text
  NOT_UTF8("The bytes are not UTF-8 text."),
  TAB("A tab stands where only spaces may."),
  INVISIBLE_CHARACTER("A character that cannot be seen stands in the text."),
  CURLY_QUOTE("A curly quote opens a value; only straight quotes do."),
  LOST_AFTER_HASH("Text after a space and a hash is a comment, and would be lost."),
  JOINED_FILES("A byte-order mark stands inside the text: two files were joined."),
  TOO_LARGE("The text, its depth or its number of parts is over the limit."),
  // YAML
  SYNTAX("The text is not well-formed YAML."),
  EMPTY_FILE("The file holds nothing."),
  SEVERAL_DOCUMENTS("The file holds more than one document."),
  ANCHOR_OR_ALIAS("Anchors, aliases and merge keys are not used: a value stands where it is read."),
  TAG("Explicit tags and directives are not used."),
  KEY_NOT_TEXT("A key is not plain text."),
  DUPLICATE_KEY("A key stands twice in one place."),
  // shape
  MISSING_FILE("The file cannot be read."),
  UNKNOWN_KEY("The key is not known here."),
  MISSING_KEY("A key that must be there is missing."),
  WRONG_SHAPE("Text, a list or named fields were expected and something else stands there."),
  EMPTY_VALUE("Nothing is written after the colon."),
  UNKNOWN_WORD("The word is not one of those that may stand here."),
  BAD_NAME("A name has characters that names may not have."),
  BAD_DATE("The text is not a date of the form year-month-day."),
  BAD_TIME("The text is not a time of the form hours:minutes."),
  IN_THE_FUTURE("A time lies after the moment of the question."),
  DUPLICATE_NAME("A name is given to two things."),
  // numbers
  NOT_A_NUMBER("The text is not a plain number."),
  DECIMAL_COMMA("A comma stands where the decimal point should."),
  UNIT_IN_NUMBER("A unit is written into a number."),
  OUT_OF_RANGE("The number is outside the range of its measure."),
  OFF_STEP("The number lies between two steps of its measure."),
  UNUSUAL_LIMIT("A limit lies outside all that were read in publications."),
  WRONG_UNIT("The unit is not the unit of the measure."),
  REVERSED("The lower end lies above the upper end."),
  // references
  UNKNOWN_FINDING("No finding or term has this name."),
  UNKNOWN_LIST("The vocabulary has no such list."),
  UNKNOWN_OPTION("The option is not one of the finding's."),
  UNKNOWN_VALUE("No value has this name."),
  UNKNOWN_BAND("No band of the finding has this name."),
  UNKNOWN_RULE("No rule has this name."),
  UNKNOWN_CONTACT("No contact has this name."),
  UNKNOWN_EVENT("The vocabulary has no event or use of this name."),
  UNKNOWN_CLOCK("The time zone database has no place of this name."),
  UNKNOWN_CITATION("The bibliography has no such entry."),
  UNKNOWN_QUESTION("The policy does not answer this question."),
  COMES_AFTER_ITSELF("A question comes after itself, near or far."),
  UNKNOWN_POLICY("No policy has this name."),
  FOLDER_NAME("A policy has another name than the folder in which it is looked for."),
  // logic
  TOO_MANY_WAYS("A condition can hold in more ways than can be looked at."),
  CANNOT_HOLD("The condition can never hold."),
  RULE_CANNOT_FIRE("The rule cannot fire, since something that it needs is not stated."),
  LEFT_OUT_BY_RESULT("An item of a list would be left out for what it shows."),
  BARRED_EVIDENCE("A rule allows on a test that must not count."),
  SET_ASIDE_NOTHING("A set-aside rule does not name an allow rule of its question."),
  AXIS_NOT_SPOKEN_OF("The question can proceed without a word on something that it must speak of."),
  NO_ACTION("The rule stops the work and does not say what to do."),
  NO_DIGIT("A number to call has no digit."),
  NO_CONTACT("The rule escalates and does not say to whom."),
  CONTACT_CHAIN("Whom to call goes round, or ends in one who is not always there."),
  TUBE_ORDERS_CLASH("Two rules that can fire together give opposite orders for the tube."),
  GAP("Readings exist of which the policy says nothing."),
  OVERLAP("A reading is both inside and outside what passes."),
  FAILS_WITHOUT_REPEAT(
      "A reading fails and the repeat test stated for failed readings leaves it out."),
  BAND_RELATION("A band does not lie to another as the policy says it does."),
  WORRYING_WHEN_CLOSED(
      "What a finding is when it does not apply is not its least worrying option."),
  REVERSED_DIRECTION("The passing side of a measure is its more worrying side."),
  NO_END_STATED("One end of a band is not stated."),
  MISREAD_ESCALATION(
      "A rule escalates by readings that may be off, and would only hold near its limit."),
  VALUE_NOT_STATED("The value is not stated."),
  LAPSE_NEVER("Nothing sets the lapse off, and nobody is said to watch for it."),
  LAPSE_CLOCK("A lapse goes by something that is no clock."),
  SHIFTS_DO_NOT_FIT("The shifts of a lapse overlap, or leave hours without a shift."),
  NOT_STATED("Something that a policy ordinarily states is left open."),
  FROM_MEMORY("Something from memory stands in an approved edition."),
  // texts
  NUMBER_IN_TEXT("A text has a number with a unit that the policy does not declare."),
  UNSAFE_NOTATION("A text is written in a way that has been misread."),
  STALE_MARK("A mark belongs to nothing in the policy."),
  NEVER_USED_HERE("A text asks for something that must not count."),
  UNUSED("Nothing in the policy uses the name."),
  // layers
  LOOSER_THAN_FLOOR("A layer loosens what the layer below it asks."),
  DEPARTS_FROM_NOTHING("A departure is declared where nothing is looser."),
  CLAIM_NOT_PROVED("A policy is to be printed or signed, and a claim about it is not proved."),
  DEPARTURE_ENDED("A departure from the floor has ended."),
  OUTSIDE_FLOOR_SCOPE("A layer covers patients that the layer below it does not."),
  ALREADY_DEFINED("A layer gives a name that a layer below has already given."),
  EDITION_NOT_HIGHER("The edition is not above the one that it changed."),
  NO_CHANGE_NOTE("A later edition does not say what was changed and why."),
  SHARED_LIMITS("One set of limits stands for several populations."),
  NO_WAY_ON("A patient is shut out and nothing says which policy to use."),
  SCOPES_OVERLAP("Two policies of one owner are for the same patients."),
  COPIED_LIMIT("Two populations have the same number; it may have been copied."),
  MISSING_FLOOR("The policy that this one builds on was not given."),
  // control
  DATES_OUT_OF_ORDER("The dates are not in order."),
  REVIEW_PASSED("The review date has passed."),
  ALERT_NOT_ANSWERED("What is said to answer an alert is not in the policy."),
  NOT_YET_APPROVED("The approval lies in the future."),
  ACCEPTS_NOTHING("A warning is accepted that the policy does not have."),
  ACCEPTS_SEVERAL("What is accepted fits more than one warning."),
  ACCEPTS_AN_ERROR("An error is accepted; errors can only be mended."),
  NOT_FOR_THE_BEDSIDE("The policy is not one that may answer at a bedside."),
  WOULD_OVERWRITE("Something of this name is there already, and would be written over."),
  // findings
  NOT_COUNTED("The policy does not say what counts of a list of a tube's record."),
  ENTERED_TWICE("A finding is entered, and a tube's record yields something else."),
  CONTRADICTION("Two findings cannot both be so."),
  // worked cases
  NO_CASES("The file holds no worked case."),
  OTHER_POLICY("Worked cases are tried on another policy than the one that they are cases of."),
  // guidance and cards
  TEMPLATE_FENCE("A template uses something outside its fence."),
  TEMPLATE_NAME("A template names a value that does not exist."),
  TEMPLATE_FAILED("A template could not be filled."),
  DEAD_LINK("A text points at something that does not exist."),
  DEAD_WORD("A rule of the word list never does what it says."),
  CARD_TOO_LONG("A card has more items than people work through."),
  CARD_WORDY("An item of a card has more words than are read at a glance.");

  private final String sentence;

  DiagnosticCode(String sentence) {
    this.sentence = sentence;
  }

  /** The code as people see and search it, such as {@code decimal-comma}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What it means, in one sentence. */
  public String sentence() {
    return sentence;
  }
}
