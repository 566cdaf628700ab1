package org.tidemark.yaml;

import org.tidemark.source.Span;

/**
 * A text, just as it was typed.
 *
 * @param text the text, without its quotes
 * @param style how it was written
 * @param span where, quotes included
 */
public record YamlText(String text, Style style, Span span) implements YamlNode {
  /** How a text was written. */
  public enum Style {
    PLAIN,
    QUOTED,
    BLOCK
  }

  /** Whether nothing at all stands there. */
  public boolean isMissing() {
    return style == Style.PLAIN && text.isEmpty();
  }

  @Override
  public String kind() {
    return isMissing() ? "nothing" : "text";
  }
}
