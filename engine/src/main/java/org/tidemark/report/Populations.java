package org.tidemark.report;

import java.util.List;
import org.tidemark.model.Header;

/** Whom a policy is for. */
final class Populations {
  private Populations() {}

  static List<String> of(Header header) {
    return header.scope().covers().stream()
        .filter(c -> c.finding().equals("population"))
        .flatMap(c -> c.options().stream())
        .toList();
  }
}
