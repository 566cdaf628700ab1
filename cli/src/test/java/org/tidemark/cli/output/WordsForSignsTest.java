package org.tidemark.cli.output;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.Charset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A question mark never stands where a sign could not be shown. */
class WordsForSignsTest {
  private static String shown(String text, Charset console) throws IOException {
    StringWriter below = new StringWriter();
    try (WordsForSigns words = new WordsForSigns(below, console)) {
      words.write(text);
    }
    return below.toString();
  }

  @ParameterizedTest
  @CsvSource({
    "pH \u2264 5.5, pH at most  5.5",
    "37 \u00B0C, 37  degrees C",
    "5 \u00B5g, 5 microg",
    "60\u201390, 60-90",
    "ward\u2019s, ward's",
    "caf\u00E9, caf[LATIN SMALL LETTER E WITH ACUTE]"
  })
  void onAPlainConsole(String text, String expected) throws IOException {
    assertEquals(expected, shown(text, US_ASCII));
  }

  @Test
  void aConsoleThatCanShowASignShowsIt() throws IOException {
    assertEquals("pH \u2264 5.5", shown("pH \u2264 5.5", UTF_8));
  }
}
