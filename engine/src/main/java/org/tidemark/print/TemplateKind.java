package org.tidemark.print;

import java.util.regex.Pattern;

/** The two kinds of template, what each may nest, and how a value enters its text. */
enum TemplateKind {
  /** Guidance; hospitals write these too. */
  GUIDANCE(1, true) {
    @Override
    String escape(String value) {
      return MarkdownEscape.escape(value);
    }
  },
  /** Pages of cards; only our own. */
  PAGE(3, false) {
    @Override
    String escape(String value) {
      return NUMBER_AND_WORD.matcher(HtmlEscape.escape(value)).replaceAll("&nbsp;");
    }
  },
  /** One sentence of a card, as it goes into a view; a page escapes it later. */
  SENTENCE(0, false) {
    @Override
    String escape(String value) {
      return value;
    }
  };

  /** A number and its unit, or pH and its number, are never parted at the end of a line. */
  private static final Pattern NUMBER_AND_WORD =
      Pattern.compile("(?<=[0-9]) (?=\\p{L})|(?<=\\bpH) (?=[0-9])");

  /** How many #foreach may stand inside one another. */
  final int loopsDeep;

  /** Whether lines that begin with number signs are headings and no business of Velocity's. */
  final boolean headings;

  TemplateKind(int loopsDeep, boolean headings) {
    this.loopsDeep = loopsDeep;
    this.headings = headings;
  }

  /** A value made harmless for this kind of text. */
  abstract String escape(String value);
}
