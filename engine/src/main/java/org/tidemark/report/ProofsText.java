package org.tidemark.report;

import java.util.List;
import java.util.Optional;
import org.tidemark.layer.Departed;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.print.StatementWords;
import org.tidemark.prove.Change;
import org.tidemark.prove.Comparison;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Verdict;
import org.tidemark.prove.Witness;
import org.tidemark.source.Diagnostic;

/** What is proved of a policy, and how two editions differ, as text. */
public final class ProofsText {
  private ProofsText() {}

  /** Every claim, the refuted ones with a case; then the warnings that were accepted. */
  public static String of(EffectivePolicy policy, List<Proof> proofs, List<Diagnostic> remarks) {
    Sheet sheet = new Sheet();
    sheet.line(policy.header().title() + ", edition " + policy.header().edition());
    long proved = proofs.stream().filter(p -> p.verdict().proved()).count();
    sheet.paragraph(proved + " of " + proofs.size() + " claims proved, over every case.");
    proofs.stream().filter(p -> !p.verdict().proved()).forEach(p -> notProved(sheet, policy, p));
    departed(sheet, policy);
    sheet.heading("Proved");
    proofs.stream().filter(p -> p.verdict().proved()).forEach(p -> proved(sheet, policy, p));
    AcceptedText.append(sheet, remarks);
    return sheet.toString();
  }

  private static void departed(Sheet sheet, EffectivePolicy policy) {
    if (policy.departed().isEmpty()) {
      return;
    }
    sheet.heading("!! LOOSER, AND DECLARED");
    for (Departed one : policy.departed()) {
      sheet.hanging("  - ", one.sentence() + " Why: " + one.departure().why());
      sheet.line("    Here:  " + one.departure().place());
      one.below().ifPresent(below -> sheet.line("    Below: " + below));
    }
  }

  private static void proved(Sheet sheet, EffectivePolicy policy, Proof proof) {
    sheet.hanging("  - ", proof.claim().sentence());
    stated(policy, proof).ifPresent(words -> sheet.hanging("    ", words));
  }

  /** What a policy's own statement comes to, and who said it. */
  private static Optional<String> stated(EffectivePolicy policy, Proof proof) {
    StatementWords words = new StatementWords(policy);
    return StatementWords.behind(policy, proof.claim())
        .map(s -> words.whole(s) + " " + words.saidBy(s));
  }

  private static void notProved(Sheet sheet, EffectivePolicy policy, Proof proof) {
    if (proof.verdict() instanceof Verdict.Refuted refuted) {
      sheet.heading("!! NOT SO: " + proof.claim().kind().word());
      sheet.paragraph(proof.claim().sentence());
      stated(policy, proof).ifPresent(sheet::paragraph);
      witness(sheet, refuted.witness());
    } else {
      sheet.heading("?? UNDECIDED: " + proof.claim().kind().word());
      sheet.paragraph(proof.claim().sentence());
      stated(policy, proof).ifPresent(sheet::paragraph);
      sheet.paragraph(
          "It could not be settled in "
              + ((Verdict.Undecided) proof.verdict()).steps()
              + " steps. Treat it as not so.");
    }
  }

  private static void witness(Sheet sheet, Witness witness) {
    witness.answers().forEach(sheet::paragraph);
    if (!witness.words().isEmpty()) {
      sheet.line("In this case:");
      sheet.bulleted(witness.words());
    }
  }

  /** Every change between two editions, each with one case. */
  public static String of(EffectivePolicy before, EffectivePolicy after, Comparison comparison) {
    Sheet sheet = new Sheet();
    sheet.line("Was: " + before.name() + ", edition " + before.header().edition());
    sheet.line("Is:  " + after.name() + ", edition " + after.header().edition());
    sheet.paragraph(summary(comparison));
    comparison.readings().forEach(sheet::paragraph);
    comparison.changes().forEach(c -> change(sheet, c));
    return sheet.toString();
  }

  private static String summary(Comparison comparison) {
    if (!comparison.settled()) {
      return "?? UNDECIDED. Not every change could be looked for; nothing follows from what is not listed.";
    }
    return comparison.changes().isEmpty()
        ? "No case is answered differently. This is proved over every case."
        : kinds(comparison.changes().size()) + "; every other case is answered as before.";
  }

  private static String kinds(int many) {
    return many == 1
        ? "One kind of case is answered differently"
        : many + " kinds of cases are answered differently";
  }

  private static void change(Sheet sheet, Change change) {
    sheet.heading(
        change.question()
            + ", by the rule "
            + change.rule()
            + ": was "
            + change.from().word()
            + ", is now "
            + change.to().word());
    sheet.line("What makes the difference:");
    sheet.bulleted(change.telling());
    witness(sheet, change.example());
  }
}
