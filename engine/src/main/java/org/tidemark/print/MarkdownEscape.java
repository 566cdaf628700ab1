package org.tidemark.print;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes a value harmless inside Markdown: it stays on one line and no character of it is markup.
 * Only what could act is escaped, so that "5.5" and "10 to 20 mL" stay as people search them.
 */
final class MarkdownEscape {
  private static final String ALWAYS = "\\`*_[]<>&#|~";

  /** What makes a list, a rule, a heading underline or a link when a value begins with it. */
  private static final Pattern AT_START = Pattern.compile("^(\\d*)(\\(|[-+=.):!](?!\\d))");

  private MarkdownEscape() {}

  static String escape(String value) {
    StringBuilder out = new StringBuilder(value.length() + 16);
    String line = value.strip();
    Matcher start = AT_START.matcher(line);
    int special = start.find() ? start.start(2) : -1;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (i == special || ALWAYS.indexOf(c) >= 0) {
        out.append('\\');
      }
      out.append(Harmless.visible(c));
    }
    return out.toString();
  }
}
