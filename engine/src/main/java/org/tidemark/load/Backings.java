package org.tidemark.load;

import org.tidemark.model.PolicyKind;
import org.tidemark.model.Rule;
import org.tidemark.model.Standing;

/**
 * Reads how well something is backed. A hospital's own words stand as its own unless it says
 * otherwise; a floor must say.
 */
final class Backings {
  private final PolicyKind kind;
  private final Citations citations;

  Backings(PolicyKind kind, Citations citations) {
    this.kind = kind;
    this.citations = citations;
  }

  Rule.Backing read(Fields fields) {
    Standing standing =
        switch (kind) {
          case FLOOR ->
              fields.requiredWord("standing", Standing.class).orElse(Standing.OUR_READING);
          case HOSPITAL, UNIT, PLAN ->
              fields.word("standing", Standing.class).orElse(Standing.LOCAL);
          case PUBLISHED -> fields.word("standing", Standing.class).orElse(Standing.READ);
        };
    return new Rule.Backing(standing, citations.read(fields, "source"));
  }
}
