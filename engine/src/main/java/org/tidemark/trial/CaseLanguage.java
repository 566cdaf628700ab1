package org.tidemark.trial;

import static org.tidemark.load.Holds.Plain.FINDINGS;
import static org.tidemark.load.Holds.Plain.RECORD;
import static org.tidemark.load.Holds.Plain.TEXT;
import static org.tidemark.load.Holds.Plain.TEXTS;

import java.util.List;
import org.tidemark.decide.Kind;
import org.tidemark.load.Holds;
import org.tidemark.load.Part;
import org.tidemark.model.Outcome;

/** The parts of a file of worked cases, declared as those of a policy are. */
public final class CaseLanguage {
  static final Part CASE =
      Part.called("a worked case")
          .needs("case", TEXT, "Its name.")
          .needs("kind", TEXT, "What sort of case it is, for readers.")
          .needs("source", TEXT, "Where it comes from; or: common practice, no source.")
          .needs("question", TEXT, "The question that is asked.")
          .needs("rest", Holds.word(Rest.class), "What is taken for all that it does not say.")
          .needs("findings", FINDINGS, "What is known.")
          .may("record", RECORD, "What was written of the tube.")
          .needs("expect", Holds.word(Outcome.class), "The answer that must come out.")
          .may("expect-kind", Holds.word(Kind.class), "Which hold it must be, or how it proceeds.")
          .may("rules", TEXTS, "Rules that must fire.")
          .may("not-rules", TEXTS, "Rules that must not be sure to fire.")
          .may("needs", TEXTS, "Findings that must be asked for.")
          .may("next", TEXTS, "Steps that must be said, word for word.")
          .may("call", TEXTS, "Contacts that must be called.")
          .may("case-says", TEXT, "What the source of the case says, for readers.")
          .may("why", TEXT, "Why that is the answer, for readers.")
          .may("not-expressed", TEXTS, "Facts that could not be written, for readers.");

  static final Part FILE =
      Part.called("a file of worked cases")
          .needs("cases-of", TEXT, "The policy that they are cases of.")
          .depends("usual", FINDINGS, "What a policy's own findings usually are.")
          .needs("cases", Holds.list(CASE), "The cases.");

  private CaseLanguage() {}

  /** All of these parts. */
  public static List<Part> all() {
    return List.of(FILE, CASE);
  }

  /** A file of worked cases. */
  public static Part file() {
    return FILE;
  }
}
