package org.tidemark.layer;

import java.math.BigDecimal;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Seen;

/**
 * How far readings of a finding may be off to either side.
 *
 * @param finding the finding
 * @param measure its measure
 * @param by so much, in whole steps
 */
public record HowFar(Finding finding, Domain.Measure measure, BigDecimal by) {
  /** What was read, as it counts: cut to the measure's range; words stay what they are. */
  public Seen counted(Seen read) {
    return new Seen(
        read.options(),
        read.from().map(n -> n.subtract(by).max(measure.lowest())),
        read.to().map(n -> n.add(by).min(measure.highest())));
  }

  /** The number with its unit. */
  public String words() {
    return measure.print(by) + " " + measure.unit();
  }

  /** For the reader of a card, where there is little room. */
  public String brief() {
    String name = finding.name().equals("ph") ? "pH" : finding.name().replace('-', ' ');
    return "A reading (" + name + ") may be off by " + words() + ". Pass by that much.";
  }

  /** For a reader who knows the policy's limits and not yet that readings may be off. */
  public String mayBeOff() {
    return "A reading may be off by "
        + words()
        + ". Only a reading that passes by that much passes.";
  }
}
