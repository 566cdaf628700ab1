package org.tidemark.print;

/** Makes a value harmless inside HTML text and quoted attributes. */
final class HtmlEscape {
  private HtmlEscape() {}

  static String escape(String value) {
    StringBuilder out = new StringBuilder(value.length() + 16);
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        case '\'' -> out.append("&#39;");
        case '`' -> out.append("&#96;");
        default -> out.append(Harmless.visible(c));
      }
    }
    return out.toString();
  }
}
