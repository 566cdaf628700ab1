package org.tidemark.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tidemark.model.Days;
import org.tidemark.model.Header;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.Rule;
import org.tidemark.model.Status;

/** What to bear in mind with every answer, and with this one. */
final class Cautions {
  private final Header header;
  private final LocalDate today;

  Cautions(Header header, LocalDate today) {
    this.header = header;
    this.today = today;
  }

  List<String> list(List<Rule> allowing) {
    List<String> all = new ArrayList<>();
    allowing.stream()
        .flatMap(r -> r.says().doesNotRuleOut().stream())
        .distinct()
        .forEach(r -> all.add("This does not rule out: " + r));
    if (header.reviewPassed(today)) {
      header
          .reviewBy()
          .ifPresent(
              day ->
                  all.add(
                      "This policy's review date was "
                          + Days.of(day)
                          + ". Check that it is still in force."));
    }
    if (header.status() != Status.APPROVED) {
      all.add("This policy is not approved (" + header.status().word() + "). Do not act on it.");
    }
    if (header.kind() == PolicyKind.PUBLISHED) {
      all.add(
          "This is a reading of somebody's published page, for comparison only. Do not act on it.");
    }
    all.add("This supports trained staff. Your hospital's policy and licensed practice decide.");
    return all;
  }
}
