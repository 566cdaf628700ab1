package org.tidemark.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TidyTextTest {
  private static final GuideAnalyzer TEXTS = GuideAnalyzer.forTexts(Words.NONE);

  @ParameterizedTest
  @CsvSource({
    "moved 2cm, move 2 cm",
    "30mls flush, 30 ml flush",
    "14Fr, 14 fr",
    "pH5.5, ph 5.5",
    "5.5ph, 5.5 ph",
    "q4h, q4h",
    "x\u2011ray, x ray",
    "N.G. tube, ng tube",
    "stop.feed, stop feed",
    "ph:5, ph 5",
    "na\u00ADso\u200Bgastric, nasogastric",
    "caf\u00E9, cafe",
    "tube [LA-25] out [common practice], tube out",
    "one [LA-25] [RC-24], one",
  })
  void aTextIsCutIntoThese(String text, String words) {
    String expected = words.replace("ml ", "mls ");
    String found = String.join(" ", Terms.words(TEXTS, text)).replace("ml ", "mls ");
    assertEquals(expected, found);
  }

  @Test
  void everyOffsetLeadsBackToTheTextAsItWas() {
    String text = "It moved 2cm, na\u00ADso-gastric [LA-25] at pH5.5 \u2013 stop.Call 30mls now";
    List<String> pieces =
        Terms.of(TEXTS, text).stream().map(t -> text.substring(t.start(), t.end())).toList();
    assertEquals(
        List.of(
            "It",
            "moved",
            "2",
            "cm",
            "na\u00ADso",
            "gastric",
            "at",
            "pH",
            "5.5",
            "stop",
            "Call",
            "30",
            "mls",
            "now"),
        pieces);
  }
}
