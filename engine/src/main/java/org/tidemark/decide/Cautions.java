package org.tidemark.decide;

import java.util.ArrayList;
import java.util.List;
import org.tidemark.model.Days;
import org.tidemark.model.Header;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.Status;

/** What to bear in mind with every answer of a policy. */
final class Cautions {
  private Cautions() {}

  static List<String> of(Header header, boolean reviewPassed) {
    List<String> all = new ArrayList<>();
    if (reviewPassed) {
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
    header
        .control()
        .plan()
        .ifPresent(
            plan ->
                all.add(
                    "This is a plan for one patient, agreed until "
                        + Days.of(plan.until())
                        + " ("
                        + plan.by()
                        + "). It holds for nobody else."));
    if (header.kind() == PolicyKind.PUBLISHED) {
      all.add(
          "This is a reading of somebody's published page, for comparison only. Do not act on it.");
    }
    all.add("This supports trained staff. Your hospital's policy and licensed practice decide.");
    return List.copyOf(all);
  }
}
