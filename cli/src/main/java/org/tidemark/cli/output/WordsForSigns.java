package org.tidemark.cli.output;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;

/** Writes words where a console cannot show a sign, since a question mark could be read as one. */
public final class WordsForSigns extends Writer {
  private final Writer below;
  private final CharsetEncoder encoder;

  public WordsForSigns(Writer below, Charset console) {
    this.below = below;
    this.encoder = console.newEncoder();
  }

  @Override
  public void write(char[] text, int from, int length) throws IOException {
    String all = new String(text, from, length);
    below.write(encoder.canEncode(all) ? all : inWords(all));
  }

  private String inWords(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(sign -> out.append(inWords(sign)));
    return out.toString();
  }

  private String inWords(int sign) {
    String itself = Character.toString(sign);
    return encoder.canEncode(itself) ? itself : word(sign);
  }

  private static String word(int sign) {
    return switch (sign) {
      case 0x2018, 0x2019 -> "'";
      case 0x201C, 0x201D -> "\"";
      case 0x2010, 0x2011, 0x2012, 0x2013, 0x2014, 0x2212 -> "-";
      case 0x2026 -> "...";
      case 0x2022, 0x00B7 -> "*";
      case 0x00A0, 0x2009, 0x202F -> " ";
      case 0x2192 -> "->";
      case 0x00B0 -> " degrees ";
      case 0x00B5, 0x03BC -> "micro";
      case 0x00D7 -> "x";
      case 0x00BD -> "1/2";
      case 0x2264 -> "at most ";
      case 0x2265 -> "at least ";
      case 0x00B1 -> "plus or minus ";
      default -> named(sign);
    };
  }

  private static String named(int sign) {
    String name = Character.getName(sign);
    return "[" + (name == null ? "sign " + Integer.toHexString(sign) : name) + "]";
  }

  @Override
  public void flush() throws IOException {
    below.flush();
  }

  @Override
  public void close() throws IOException {
    below.close();
  }
}
