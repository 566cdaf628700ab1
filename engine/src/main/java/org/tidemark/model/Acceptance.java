package org.tidemark.model;

import java.util.Optional;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Place;

/**
 * A warning about a policy that its owners have seen and let stand.
 *
 * @param warning which kind of warning
 * @param where the words that it underlines, or the name that they begin with
 * @param says some of its words, where kind and place fit more than one
 * @param why why it may stand
 * @param by the role or body that accepted it
 * @param place where it is written
 */
public record Acceptance(
    DiagnosticCode warning,
    String where,
    Optional<String> says,
    String why,
    String by,
    Place place) {

  /** Whether this is what was accepted, apart from how much it matters. */
  public boolean fits(Diagnostic said) {
    return said.code() == warning
        && standsAt(oneLine(said.at().text()))
        && says.filter(part -> !words(said).contains(part)).isEmpty();
  }

  /** All that is underlined, or the name that it begins with. */
  private boolean standsAt(String underlined) {
    String meant = oneLine(where);
    return underlined.equals(meant) || underlined.startsWith(meant + ":");
  }

  private static String words(Diagnostic said) {
    return said.message() + " " + said.help().orElse("");
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }
}
