package org.tidemark.load;

import static org.tidemark.load.Holds.Plain.COUNT;
import static org.tidemark.load.Holds.Plain.DAY;
import static org.tidemark.load.Holds.Plain.NAME;
import static org.tidemark.load.Holds.Plain.SCOPE;
import static org.tidemark.load.Holds.Plain.SOME_TEXTS;
import static org.tidemark.load.Holds.Plain.TEXT;
import static org.tidemark.load.Holds.Plain.TEXTS;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.load.Part.Between.AtLeastOne;
import org.tidemark.load.Part.Between.Needs;
import org.tidemark.load.Part.Between.OnlyWhen;
import org.tidemark.load.Part.Between.When;
import org.tidemark.model.Header;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.Status;

/**
 * The language of a policy: every part of its file with its fields. The readers are held to it (see
 * {@link Part}); the schema for editors, the layout of {@code tidy} and the tables of the language
 * page follow from it. A new field or part is declared here.
 */
public final class Language {
  static final Part APPROVED =
      Part.called("`approved`")
          .needs("on", DAY, "The day of the approval.")
          .needs("by", TEXT, "The committee or role that approved it; never a person's name.")
          .needs("reference", TEXT, "Where the approval is on record.");

  static final Part CHANGED =
      Part.called("`changed`")
          .needs("from", COUNT, "The edition before.")
          .needs("why", TEXT, "What changed and why, in a sentence or two.")
          .needs(
              "size", Holds.word(Header.Size.class), "Whether staff must be shown again: retrain.");

  static final Part WORDS_FROM =
      Part.called("`words-from`")
          .needs("vocabulary", TEXT, "The name of the vocabulary.")
          .needs("edition", COUNT, "Its edition.");

  static final Part EXCLUSION =
      Part.called("an exclusion")
          .may("see", TEXT, "Where to go instead; or not-stated.")
          .may("source", TEXTS, Part.SOURCE_SAYS)
          .andFindings();

  static final Part ACCEPTED =
      Part.called("an accepted warning")
          .needs("warning", TEXT, "The warning's code.")
          .needs("where", TEXT, "What is underlined in the warning.")
          .may("says", TEXT, "Words of its message, where several have that code and place.")
          .needs("why", TEXT, "Why it may stand.")
          .needs("by", TEXT, "The committee or role that let it stand.");

  static final Part AGREED =
      Part.called("`agreed`")
          .needs("by", TEXT, "The role that agreed to the plan.")
          .needs("until", DAY, "Its last day.");

  static final Part ALERT =
      Part.called("an alert")
          .needs("alert", TEXTS, "The alert, as the bibliography calls it.")
          .needs("answered-by", SOME_TEXTS, "What of the policy answers it.");

  static final Part DEPARTURE =
      Part.called("a departure")
          .depends("value", TEXT, "The number that is not as strict.")
          .depends("rule", TEXT, "The rule that does not apply, or that rests on the test.")
          .depends("lapse", TEXT, "The lapse that does not apply.")
          .depends("term", TEXT, "The term whose change loosens.")
          .depends("test", TEXT, "The test that counts here in one rule.")
          .depends("steps", TEXT, "The steps that begin later, or take what is barred.")
          .needs("why", TEXT, "Why.")
          .needs("approved-by", TEXT, "The committee or role that decided it.")
          .needs("until", DAY.orNotStated(), "Its last day.")
          .may("source", TEXTS, Part.SOURCE_SAYS)
          .where(
              new AtLeastOne(List.of("value", "rule", "lapse", "term", "test", "steps")),
              new Needs("test", "rule"));

  static final Part ACCEPTED_TEST =
      Part.called("an accepted test")
          .needs("test", TEXT, "The test that counts here in one rule.")
          .needs("rule", TEXT, "The rule that rests on it.")
          .needs("why", TEXT, "Why.")
          .needs("approved-by", TEXT, "The committee or role that decided it.")
          .needs("until", DAY.orNotStated(), "Its last day.")
          .may("source", TEXTS, Part.SOURCE_SAYS);

  static final Part POLICY =
      Part.called("a policy")
          .needs("policy", NAME, "Its name.")
          .needs("kind", Holds.word(PolicyKind.class), "What sort of policy it is.")
          .needs("title", TEXT, "What staff call it.")
          .needs("owner", TEXT, "The hospital or body that owns it.")
          .needs("edition", COUNT, "Its edition: 1, 2, 3 and so on.")
          .needs("status", Holds.word(Status.class), "Where it stands.")
          .depends("approved", Holds.group(APPROVED).orNotStated(), "Who approved it, and when.")
          .may("review-by", DAY.orNotStated(), "The day by which it is looked at again.")
          .may("changed", Holds.group(CHANGED), "What changed since the edition before.")
          .needs("words-from", Holds.group(WORDS_FROM), "The vocabulary that its words are from.")
          .needs("for", SCOPE.orNotStated(), "Whom and where it is for.")
          .may("not-for", Holds.list(EXCLUSION).orNotStated(), "What it is not for.")
          .may("builds-on", TEXT, "The policy below it; or nothing.")
          .may("clock", TEXT, "The place whose clock it lives by, such as Europe/London.")
          .depends("agreed", Holds.group(AGREED), "Of a plan: who agreed to it, and until when.")
          .may(
              "values",
              Holds.named(RuleParts.VALUE).orNotStated(),
              "Its numbers, each written once.")
          .may(
              "bands", Holds.named(RuleParts.BAND).orNotStated(), "Stretches of readings, by name.")
          .may("barred", Holds.list(RuleParts.BARRED).orNotStated(), "Tests that must never count.")
          .may(
              "terms", Holds.named(RuleParts.TERM).orNotStated(), "Yes-or-no names for conditions.")
          .depends("questions", Holds.named(RuleParts.QUESTION).orNotStated(), "What it decides.")
          .may(
              "lapses",
              Holds.list(CareParts.LAPSE).orNotStated(),
              "What makes a check no longer count.")
          .may(
              "fallback",
              Holds.group(CareParts.FALLBACK).orNotStated(),
              "What is tried when nothing comes back.")
          .may(
              "retest",
              Holds.group(CareParts.FALLBACK).orNotStated(),
              "What is done after a reading that does not pass.")
          .may("contacts", Holds.named(CareParts.CONTACT).orNotStated(), "Whom its rules call.")
          .may(
              "calls",
              Holds.entries(TEXT).orNotStated(),
              "Whom to call for rules of the layer below.")
          .may("trays", Holds.list(CareParts.TRAY).orNotStated(), "What is gathered for each tube.")
          .may(
              "records",
              Holds.named(CareParts.RECORD).orNotStated(),
              "What is written down, and when.")
          .depends(
              "own-findings",
              Holds.named(OtherFiles.FINDING),
              "Findings that it asks beside those of the vocabulary.")
          .depends(
              "counts",
              Holds.entries(Holds.group(RuleParts.COUNTED)),
              "What counts of a tube's record.")
          .may("alerts", Holds.list(ALERT), "Alerts that it answers, and by what.")
          .depends("always", Holds.list(RuleParts.STATEMENT), "What must always be so; proved.")
          .depends("never", Holds.list(RuleParts.STATEMENT), "What must never be so; proved.")
          .depends(
              "departs-from-floor",
              Holds.list(DEPARTURE),
              "Where it is looser than the layer below, who decided it, and until when.")
          .depends(
              "accepts-barred",
              Holds.list(ACCEPTED_TEST),
              "Of a policy that builds on nothing: a barred test that counts in one rule.")
          .may(
              "accepted-warnings",
              Holds.list(ACCEPTED).orNotStated(),
              "Warnings that its owners let stand.")
          .may(
              "numbers-that-are-no-limits",
              TEXTS,
              "Numbers in its texts that are no limits of it, such as telephone numbers.")
          .may("not-stated", TEXTS, "What the source leaves open, for readers.")
          .where(
              new When("status", "approved", "approved"),
              new When("kind", "plan", "agreed"),
              new OnlyWhen("kind", "plan", "agreed"));

  private static final Map<String, Part> PARTS = parts();

  /** Parts that messages call by more than one name. */
  private static final Map<String, String> OTHER_NAMES =
      Map.of(
          "`retest`", CareParts.FALLBACK.called(),
          "a statement of what is never so", RuleParts.STATEMENT.called(),
          "`film-readings`", RuleParts.COUNTED.called(),
          "`ph-readings`", RuleParts.COUNTED.called(),
          "`lengths`", RuleParts.COUNTED.called());

  private Language() {}

  private static Map<String, Part> parts() {
    List<Part> all =
        List.of(
            POLICY,
            APPROVED,
            CHANGED,
            WORDS_FROM,
            EXCLUSION,
            RuleParts.VALUE,
            RuleParts.BAND,
            RuleParts.BARRED,
            RuleParts.TERM,
            RuleParts.SOME_OF,
            RuleParts.READING,
            RuleParts.QUESTION,
            RuleParts.WORDS,
            RuleParts.RULE,
            CareParts.LAPSE,
            CareParts.FALLBACK,
            CareParts.STEP,
            CareParts.STEP_ALTERNATIVE,
            CareParts.BARRED_STEP,
            CareParts.CONTACT,
            CareParts.TRAY,
            CareParts.RECORD,
            ACCEPTED,
            RuleParts.STATEMENT,
            RuleParts.COUNTED,
            RuleParts.REPEATED,
            RuleParts.MOVED,
            CareParts.HOURS,
            ALERT,
            AGREED,
            RuleParts.PLAN_MAY_SET,
            RuleParts.COUNTED_BY,
            DEPARTURE,
            ACCEPTED_TEST);
    Map<String, Part> parts = new LinkedHashMap<>();
    all.forEach(part -> parts.put(part.called(), part));
    return parts;
  }

  /**
   * The part that messages call so, if it is declared; a name in back quotes behind it is that of
   * one such part, as in {@code the value `ph-cut-off`}.
   */
  static Optional<Part> part(String called) {
    int name = called.indexOf(" `");
    String kind = name < 0 ? called : called.substring(0, name);
    return Optional.ofNullable(
            PARTS.get(PARTS.containsKey(called) ? called : OTHER_NAMES.getOrDefault(kind, kind)))
        .or(() -> OtherFiles.part(kind));
  }

  /** The parts of a policy's file, the file itself first. */
  public static List<Part> ofPolicies() {
    return List.copyOf(PARTS.values());
  }

  /** A condition on a finding that is measured. */
  public static Part reading() {
    return RuleParts.READING;
  }

  /** So many of a list of conditions. */
  public static Part someOf() {
    return RuleParts.SOME_OF;
  }

  /** A file that holds a policy. */
  public static Part policy() {
    return POLICY;
  }
}
