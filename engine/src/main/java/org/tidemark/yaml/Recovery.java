package org.tidemark.yaml;

import java.util.Set;
import java.util.TreeSet;
import org.tidemark.source.SourceText;

/**
 * Puts a harmless text in the place of a value that cannot be parsed, so that the rest of the file
 * is read and all its problems come together. The file is refused all the same.
 */
final class Recovery {
  private static final int MOST = 30;

  private final SourceText source;
  private final StringBuilder clean;
  private final Set<Integer> mended = new TreeSet<>();
  private final Set<Integer> emptied = new TreeSet<>();

  Recovery(SourceText source, StringBuilder clean) {
    this.source = source;
    this.clean = clean;
  }

  /** The lines on which the text is no longer what was typed. */
  Set<Integer> lines() {
    return mended;
  }

  /** Whether the structure, too, may be other than what was meant. */
  boolean structureIsDoubtful() {
    return !emptied.isEmpty();
  }

  /** Takes the value, or the whole line, out of the way; false when that does not help any more. */
  boolean mend(int offset) {
    int line = source.lineAt(offset);
    Line parts = Line.of(source, clean, line);
    if (mended.size() >= MOST || emptied.contains(line)) {
      return false;
    }
    boolean value = parts.named() && offset >= parts.value().start() && !mended.contains(line);
    if (value) {
      fill(parts.value().start(), parts.value().end());
    } else {
      blank(line);
    }
    mended.add(line);
    blankWhatBelongsToIt(line, parts.key() - source.startOfLine(line));
    return true;
  }

  private void fill(int start, int end) {
    for (int i = start; i < end; i++) {
      clean.setCharAt(i, end - start == 1 ? 'x' : i == start || i == end - 1 ? '"' : '-');
    }
  }

  private void blank(int line) {
    emptied.add(line);
    for (int i = source.startOfLine(line); i < source.endOfLine(line); i++) {
      clean.setCharAt(i, ' ');
    }
  }

  private void blankWhatBelongsToIt(int line, int column) {
    int next = line + 1;
    while (next <= source.lineCount() && liesDeeper(next, column)) {
      mended.add(next);
      for (int i = source.startOfLine(next); i < source.endOfLine(next); i++) {
        clean.setCharAt(i, ' ');
      }
      next++;
    }
  }

  private boolean liesDeeper(int line, int column) {
    String text = clean.substring(source.startOfLine(line), source.endOfLine(line));
    return !text.isBlank() && text.length() - text.stripLeading().length() > column;
  }
}
