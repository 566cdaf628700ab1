package org.tidemark.model;

import java.util.Optional;
import java.util.Set;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;

/**
 * Finds findings that were entered though they cannot be there: a pH where nothing came back,
 * trouble where no sign was seen.
 */
public final class Contradictions {
  private Contradictions() {}

  public static void report(Findings findings, Vocabulary vocabulary, Problems problems) {
    findings
        .entries()
        .forEach(
            (name, entry) -> {
              Finding finding = vocabulary.require(name);
              for (Condition.Options needed : finding.applies()) {
                check(finding, entry, needed, findings, problems);
              }
            });
  }

  private static void check(
      Finding finding,
      Findings.Entry entry,
      Condition.Options needed,
      Findings findings,
      Problems problems) {
    Optional<Findings.Entry> parent = findings.entry(needed.finding());
    boolean closedAnyway =
        finding.whenClosed().map(c -> entry.seen().options().contains(c)).orElse(false);
    if (parent.isEmpty() || closedAnyway || overlaps(parent.get().seen(), needed.options())) {
      return;
    }
    problems.add(
        Diagnostic.error(
                DiagnosticCode.CONTRADICTION,
                entry.place().span(),
                "`"
                    + finding.name()
                    + "` cannot be "
                    + entry.seen().words()
                    + " while `"
                    + needed.finding()
                    + "` is "
                    + parent.get().seen().words())
            .and(parent.get().place().span(), "this was entered here")
            .help(
                "`"
                    + finding.name()
                    + "` is asked only when `"
                    + needed.finding()
                    + "` is "
                    + String.join(" or ", needed.options())
                    + "; correct one of the two"));
  }

  private static boolean overlaps(Seen seen, Set<String> options) {
    return seen.options().stream().anyMatch(options::contains);
  }
}
