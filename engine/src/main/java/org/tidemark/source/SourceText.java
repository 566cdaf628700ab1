package org.tidemark.source;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;

/**
 * A text with a name, and the arithmetic between offsets, lines and columns.
 *
 * <p>Offsets count UTF-16 units from 0. Lines and columns count from 1, as people do; a column is a
 * whole character, also one that takes two units. A line ends at LF, CR or CR LF.
 */
public final class SourceText {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final String name;
  private final String text;
  private final int[] lineStarts;

  private SourceText(String name, String text) {
    this.name = name;
    this.text = text;
    this.lineStarts = lineStarts(text);
  }

  /**
   * A text already in memory; a byte-order mark at its very start is dropped, as editors add it
   * unasked.
   */
  public static SourceText of(String name, String text) {
    boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
    return new SourceText(name, marked ? text.substring(1) : text);
  }

  /**
   * Reads bytes as UTF-8 and nothing else; bytes that are not UTF-8 are an error at their place,
   * never guessed at.
   */
  public static Loaded<SourceText> decode(String name, byte[] bytes) {
    try {
      return Loaded.good(of(name, strict().decode(ByteBuffer.wrap(bytes)).toString()));
    } catch (CharacterCodingException notUtf8) {
      return Loaded.broken(notUtf8(name, bytes));
    }
  }

  private static Diagnostic notUtf8(String name, byte[] bytes) {
    int offset = firstBadByte(bytes);
    SourceText upToThere = of(name, new String(bytes, 0, offset, StandardCharsets.UTF_8));
    int end = upToThere.text().length();
    return Diagnostic.error(
            DiagnosticCode.NOT_UTF8,
            upToThere.span(end, end),
            String.format(
                Locale.ROOT,
                "byte %d (value %02X) is not UTF-8 text",
                offset,
                bytes[offset] & 0xFF))
        .help("save the file as UTF-8; a word processor may have written it in another encoding");
  }

  private static CharsetDecoder strict() {
    return StandardCharsets.UTF_8
        .newDecoder()
        .onMalformedInput(CodingErrorAction.REPORT)
        .onUnmappableCharacter(CodingErrorAction.REPORT);
  }

  private static int firstBadByte(byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = strict().decode(in, out, true);
    return result.isError() ? in.position() : Math.max(0, bytes.length - 1);
  }

  private static int[] lineStarts(String text) {
    int[] starts = new int[text.length() + 1];
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean crBeforeLf = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      if (c == '\n' || (c == '\r' && !crBeforeLf)) {
        starts[count++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, count);
  }

  /** What people call this text: a file's path, or a name such as {@code findings}. */
  public String name() {
    return name;
  }

  public String text() {
    return text;
  }

  public int lineCount() {
    return lineStarts.length;
  }

  /** The line, from 1, that holds the offset. */
  public int lineAt(int offset) {
    int found = Arrays.binarySearch(lineStarts, offset);
    return found >= 0 ? found + 1 : -found - 1;
  }

  /** The column, from 1, of the offset in its line. */
  public int columnAt(int offset) {
    return text.codePointCount(lineStarts[lineAt(offset) - 1], offset) + 1;
  }

  /** The offset at which a line, from 1, begins. */
  public int startOfLine(int line) {
    return lineStarts[line - 1];
  }

  /** A line, from 1, without its line end. */
  public String line(int line) {
    return text.substring(lineStarts[line - 1], endOfLine(line));
  }

  /** The offset at which a line, from 1, ends, before its line end. */
  public int endOfLine(int line) {
    int start = lineStarts[line - 1];
    int end = line < lineStarts.length ? lineStarts[line] : text.length();
    while (end > start && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
      end--;
    }
    return end;
  }

  /** The place from {@code start} up to but not including {@code end}. */
  public Span span(int start, int end) {
    return new Span(this, start, end);
  }

  /** The place that is this whole text's first character. */
  public Span beginning() {
    return span(0, Math.min(1, text.length()));
  }

  @Override
  public String toString() {
    return name;
  }
}
