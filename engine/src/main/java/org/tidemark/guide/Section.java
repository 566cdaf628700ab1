package org.tidemark.guide;

import java.util.List;

/**
 * A part of an article under one heading.
 *
 * @param heading the heading; empty for what comes before the first one
 * @param blocks paragraphs, steps and table rows as plain text, in their order
 */
record Section(String heading, List<String> blocks) {
  Section {
    blocks = List.copyOf(blocks);
  }
}
