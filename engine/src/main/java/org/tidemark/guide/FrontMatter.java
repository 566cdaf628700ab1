package org.tidemark.guide;

import java.util.Optional;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;

/**
 * The two parts of an article's file. The head keeps its offsets, so that what is said about it
 * points into the file.
 *
 * @param head the YAML between the two lines of dashes
 * @param body what comes after them
 */
record FrontMatter(SourceText head, Located<String> body) {
  private static final String FENCE = "---";

  static Loaded<FrontMatter> split(SourceText file) {
    if (!isFence(file, 1)) {
      return Loaded.broken(
          Diagnostic.error(
                  DiagnosticCode.SYNTAX, file.beginning(), "the file does not begin with `---`")
              .help("an article begins with a line `---`, its fields, and a second line `---`"));
    }
    return secondFence(file).map(line -> cut(file, line)).orElseGet(() -> unclosed(file));
  }

  private static boolean isFence(SourceText file, int line) {
    return file.line(line).stripTrailing().equals(FENCE);
  }

  private static Optional<Integer> secondFence(SourceText file) {
    for (int line = 2; line <= file.lineCount(); line++) {
      if (isFence(file, line)) {
        return Optional.of(line);
      }
    }
    return Optional.empty();
  }

  private static Loaded<FrontMatter> unclosed(SourceText file) {
    return Loaded.broken(
        Diagnostic.error(
                DiagnosticCode.SYNTAX, file.span(0, FENCE.length()), "no second `---` follows")
            .help("close the fields with a line `---`; the text of the article comes after it"));
  }

  private static Loaded<FrontMatter> cut(SourceText file, int fence) {
    String blanked = " ".repeat(FENCE.length()) + file.text().substring(FENCE.length());
    SourceText head = SourceText.of(file.name(), blanked.substring(0, file.startOfLine(fence)));
    int end = file.text().length();
    int start = fence < file.lineCount() ? file.startOfLine(fence + 1) : end;
    Span place = file.span(start, end);
    return Loaded.good(new FrontMatter(head, Located.of(place.text(), place)));
  }
}
