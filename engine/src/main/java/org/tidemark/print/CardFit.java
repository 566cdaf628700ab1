package org.tidemark.print;

import java.util.List;
import java.util.Optional;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Span;

/**
 * Whether a card fits on one A5 side at the sizes of its style. A card that does not fit is
 * refused: it is never shrunk, and never runs over onto a side that lacks its strip. It is an
 * estimate, in tenths of a point, with the average letter at 0.45 of its size; checked against
 * pages that a browser laid out.
 */
final class CardFit {
  private static final int SIDE = 5610;
  private static final int WIDTH = 3820;
  private static final int SMALL = 9;
  private static final int TEXT = 12;
  private static final int TRAY = 14;
  private static final int TITLE = 17;

  // What style and drawing take away from the width of a text.
  private static final int BESIDE_ITEM = 330;
  private static final int BESIDE_TRAY_ITEM = 190;
  private static final int BESIDE_NEVER = 660;
  private static final int BESIDE_TITLE = 1160;
  private static final int BESIDE_STOP = 150;
  private static final int BESIDE_STOP_SIGN = 700;
  private static final int BESIDE_CALL = 550;
  private static final int BLANK_LETTERS = 12;

  // Rules, frames and gaps, from the style.
  private static final int AROUND_HEADER = 50;
  private static final int AROUND_PAUSE = 190;
  private static final int AROUND_ITEM = 12;
  private static final int AROUND_STOP = 340;
  private static final int AROUND_NEVER = 50;
  private static final int AROUND_FOOTER = 60;

  private CardFit() {}

  static Optional<Diagnostic> check(CardView card, Span at) {
    int height =
        header(card.strip().card(), card.strip())
            + banners(card.banners())
            + card.pauses().stream().mapToInt(CardFit::pause).sum()
            + never(card.never(), TEXT)
            + footer(card.strip(), card.shortForms(), card.sources());
    return tooHigh(height, at);
  }

  static Optional<Diagnostic> check(TrayView tray, Span at) {
    int items =
        tray.items().stream()
            .mapToInt(item -> block(item, TRAY, BESIDE_TRAY_ITEM) + 2 * AROUND_ITEM)
            .sum();
    int height =
        header("Tray: " + tray.tube(), tray.strip())
            + banners(tray.banners())
            + AROUND_PAUSE
            + items
            + never(tray.never(), TRAY)
            + footer(tray.strip(), tray.shortForms(), tray.sources());
    return tooHigh(height, at);
  }

  private static Optional<Diagnostic> tooHigh(int height, Span at) {
    if (height <= SIDE) {
      return Optional.empty();
    }
    int lines = (height - SIDE + lineOf(TEXT) - 1) / lineOf(TEXT);
    return Optional.of(
        Diagnostic.error(
                DiagnosticCode.CARD_TOO_LONG,
                at,
                "the card is about "
                    + lines
                    + (lines == 1 ? " line" : " lines")
                    + " too long for A5")
            .help("shorten its sentences or the policy's; a card is never shrunk to fit"));
  }

  private static int header(String title, CardStrip strip) {
    return block(title, TITLE, BESIDE_TITLE) + block(strip.forWhom(), TEXT, 0) + AROUND_HEADER;
  }

  private static int banners(List<String> banners) {
    return banners.stream().mapToInt(b -> block("Take note: " + b, TEXT, BESIDE_STOP) + 120).sum();
  }

  private static int pause(CardView.Pause pause) {
    int items = pause.items().stream().mapToInt(CardFit::item).sum();
    return AROUND_PAUSE + items + pause.stop().map(CardFit::stop).orElse(0);
  }

  private static int item(CardView.Item item) {
    String blanks =
        item.blank().map(b -> " " + b.label() + "_".repeat(BLANK_LETTERS) + b.unit()).orElse("");
    return block(item.says() + blanks, TEXT, BESIDE_ITEM) + AROUND_ITEM;
  }

  private static int stop(CardView.Stop stop) {
    return AROUND_STOP
        + 2 * lineOf(TEXT)
        + all(stop.goOnIf(), BESIDE_STOP_SIGN)
        + all(stop.otherwise(), BESIDE_STOP)
        + all(stop.call(), BESIDE_CALL);
  }

  private static int all(List<String> texts, int beside) {
    return texts.stream().mapToInt(text -> block(text, TEXT, beside)).sum();
  }

  private static int never(List<String> never, int size) {
    return AROUND_NEVER
        + never.stream().mapToInt(n -> block(n, size, BESIDE_NEVER) + AROUND_ITEM).sum();
  }

  private static int footer(CardStrip strip, List<String> forms, List<String> sources) {
    String until =
        "Not a record. Write in the notes. Use until 30 Sep 2026. After this date do not"
            + " use. Remove and tell: "
            + strip.owner()
            + ".";
    String small =
        strip.hospital()
            + strip.card()
            + strip.code()
            + strip.edition()
            + strip.reference()
            + String.join(" ", forms)
            + String.join(" ", sources);
    String words =
        ". , card . Edition , issued 30 Sep 2026. Approved under . Side 1 of 1."
            + " Fingerprint AAAA AAAA. An aid for trained staff: local policy and licensed practice"
            + " decide. Sources: ";
    return AROUND_FOOTER + block(until, TEXT, 0) + block(small + words, SMALL, 0);
  }

  private static int block(String text, int size, int beside) {
    int letters = (WIDTH - beside) * 10 / (size * 45);
    return Math.max(1, (text.length() + letters - 1) / letters) * lineOf(size);
  }

  /** A line is a quarter higher than its letters. */
  private static int lineOf(int size) {
    return size * 25 / 2;
  }
}
