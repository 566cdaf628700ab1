package org.tidemark.decide;

import org.tidemark.model.Domain;
import org.tidemark.model.Finding;

/** Makes needs out of findings. */
final class Needs {
  private Needs() {}

  static Need of(Finding finding) {
    String unit = finding.domain() instanceof Domain.Measure measure ? measure.unit() : "";
    return new Need(finding.name(), finding.asks(), finding.domain().options(), unit);
  }
}
