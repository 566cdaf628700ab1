package org.tidemark.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.print.CardFiles;
import org.tidemark.print.CardPrinter;
import org.tidemark.print.CardStrip;
import org.tidemark.print.CardView;
import org.tidemark.print.Fingerprint;
import org.tidemark.print.PolicyView;
import org.tidemark.print.TrayView;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;

/** The cards of an invented hospital, compared with pages that were looked at. */
class CardsTest {
  private static final Path CARDS = Path.of("src/main/resources/org/tidemark/content/cards");

  private final CardPrinter printer = new CardPrinter(CardFiles.onClassPath());

  static CardStrip strip(String card, String code, boolean draft) {
    return new CardStrip(
        "Example General Hospital",
        card,
        code,
        "adults on wards and in the emergency department",
        "3",
        LocalDate.of(2026, 9, 1),
        LocalDate.of(2028, 9, 1),
        "Nutrition steering group",
        "NSG-26-14",
        1,
        1,
        draft);
  }

  static PolicyView policy(String cutOff) {
    Map<String, String> values = new TreeMap<>();
    values.put("lowest_pass", "1.0");
    values.put("ph_cut_off", cutOff);
    values.put("second_reader_above", "4.0");
    values.put("sample_least", "1 mL");
    values.put("signs_contact", "critical care outreach");
    values.put("head_up", "30 degrees");
    values.put("retest_wait", "60 minutes");
    Map<String, Boolean> stated = new TreeMap<>();
    values.keySet().forEach(name -> stated.put(name, true));
    return new PolicyView(
        values,
        stated,
        Map.of(
            "fallback_then",
            List.of(
                "If nothing comes, ask for an X-ray that shows the tip, and write on the request"
                    + " that it is for the tube.",
                "Put nothing down the tube until the X-ray is read and the result is written."),
            "ph_not_enough",
            List.of(
                "pH is not enough: liquid before first check; in the airway before; not deep"
                    + " enough."),
            "fallback_call",
            List.of(
                "Nutrition nurse, 08:00 to 18:00, Monday to Friday.",
                "Otherwise: senior nurse in charge of the site, always.")),
        Map.of());
  }

  private CardView beforeFirstUse(String cutOff, boolean draft) {
    return value(
        printer.checklist(
            "before-first-use",
            strip("Before first use", "K7M", draft),
            List.of(),
            policy(cutOff)));
  }

  @Test
  void beforeFirstUseIsThePageThatWasLookedAt() throws IOException {
    golden("before-first-use", value(printer.page(beforeFirstUse("5.0", false))));
  }

  @Test
  void aDraftSaysSoInItsHeadingAndItsStrip() throws IOException {
    String page = value(printer.page(beforeFirstUse("5.0", true)));
    golden("before-first-use-draft", page);
    assertEquals(2, count(page, "DRAFT – do not use<"));
  }

  @Test
  void fineFeedingIsThePageThatWasLookedAt() throws IOException {
    golden("tray-fine-feeding", value(printer.page(tray())));
  }

  private static TrayView tray() {
    return new TrayView(
        strip("Tray: Fine-bore feeding tube", "Q4D", false),
        "Fine-bore feeding tube with a guide wire",
        List.of(),
        List.of(
            "8 Fr polyurethane tube with its guide wire, marked in cm, that shows on X-ray",
            "60 mL enteral syringe",
            "pH strips for stomach fluid, in date, read in half units",
            "Gloves and apron"),
        List.of(
            "Do not put a guide wire back while the tube is in.",
            "Do not put litmus paper on this tray."),
        List.of("Fr: French gauge, the outside size of a tube"),
        List.of("EQ-04", "EQ-27"));
  }

  @Test
  void everyPageStandsAlone() {
    for (String page :
        List.of(value(printer.page(beforeFirstUse("5.0", false))), value(printer.page(tray())))) {
      assertTrue(page.startsWith("<!DOCTYPE html>\n<html lang=\"en-GB\">"), page);
      for (String outside :
          List.of("http", "<script", "<img", "<link", "@import", "url(", "src=")) {
        assertFalse(page.contains(outside), outside);
      }
      assertEquals(1, count(page, "<h1>"));
      assertEquals(1, count(page, "Not a record. Write in the notes."));
      assertTrue(
          page.contains("Use until 1&nbsp;Sep 2028.</strong> After this date do not use."), page);
      assertFalse(page.contains("$"), page);
    }
  }

  @Test
  void theStopStandsBetweenTheCheckAndTheUse() {
    String page = value(printer.page(beforeFirstUse("5.0", false)));
    assertTrue(page.indexOf("Find out where") < page.indexOf("STOP"), page);
    assertTrue(page.indexOf("STOP") < page.indexOf("Take out any guide wire"), page);
  }

  @Test
  void aNumberOfThePolicyIsOnTheCardAndTheOldOneNowhere() {
    String page = value(printer.page(beforeFirstUse("5.5", false)));
    assertTrue(
        page.contains("<li>The pH is 1.0&nbsp;to 5.5, with nothing below against it.</li>"), page);
    assertFalse(page.contains("5.0"), page);
  }

  @Test
  void aLineWhoseValueIsNotStatedIsLeftOut() {
    PolicyView all = policy("5.0");
    Map<String, String> values = new TreeMap<>(all.values());
    Map<String, Boolean> stated = new TreeMap<>(all.stated());
    for (String name : List.of("second_reader_above", "head_up", "sample_least", "lowest_pass")) {
      values.remove(name);
      stated.put(name, false);
    }
    PolicyView view = new PolicyView(values, stated, all.lists(), all.policy());
    CardView card =
        value(
            printer.checklist(
                "before-first-use", strip("Before first use", "K7M", false), List.of(), view));
    assertEquals(
        List.of("Draw on the tube.", "Test it on an in-date strip for stomach fluid."),
        card.pauses().get(1).items().stream().map(CardView.Item::says).toList());
    assertEquals(
        "The pH is 5.0 or less, with nothing below against it.",
        card.pauses().get(1).stop().orElseThrow().goOnIf().get(0));
    assertEquals(2, card.pauses().get(2).items().size());
  }

  @Test
  void theFingerprintFollowsTheWordsAndNothingElse() {
    String before = Fingerprint.of(beforeFirstUse("5.0", false));
    assertTrue(
        Pattern.matches(
            "[ACDEFGHJKLMNPQRTUVWXYZ234679]{4} [ACDEFGHJKLMNPQRTUVWXYZ234679]{4}", before),
        before);
    assertEquals(before, Fingerprint.of(beforeFirstUse("5.0", false)));
    assertNotEquals(before, Fingerprint.of(beforeFirstUse("5.5", false)));
    assertNotEquals(before, Fingerprint.of(beforeFirstUse("5.0", true)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG", "th-TH-u-ca-buddhist-nu-thai"})
  void everyLocalePrintsTheSamePage(String tag) {
    String here = value(printer.page(beforeFirstUse("5.0", false)));
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag(tag));
    try {
      assertEquals(here, value(printer.page(beforeFirstUse("5.0", false))));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void hostileNamesStayText() {
    CardStrip strip = strip("<script>alert('x')</script>", "\"onload=x", false);
    TrayView tray =
        new TrayView(
            strip,
            "<b>$strip.card</b>#if",
            List.of(),
            List.of("a & b"),
            List.of(),
            List.of(),
            List.of());
    String page = value(printer.page(tray));
    assertFalse(page.contains("<script"), page);
    assertTrue(page.contains("&lt;b&gt;$strip.card&lt;/b&gt;#if"), page);
    assertTrue(page.contains("a &amp; b"), page);
  }

  @Test
  void aCardThatDoesNotFitIsRefused() {
    PolicyView fits = policy("5.0");
    Map<String, List<String>> lists = new TreeMap<>(fits.lists());
    lists.put(
        "fallback_then",
        List.of(
            "If nothing comes, ask for an X-ray that shows the tip, and write on the request that"
                + " it is for the tube.",
            "Put nothing down the tube until the X-ray is read and the result is written.",
            "Tell the doctor on call, who decides what can be given in some other way until then."));
    PolicyView longer = new PolicyView(fits.values(), fits.stated(), lists, fits.policy());
    assertEquals(List.of("the card is about 2 lines too long for A5"), messages(longer));
  }

  @Test
  void manyItemsAreAWarningAndTooManyAreRefused() {
    assertEquals(List.of(), messages(policy("5.0")));
    String pause = "card: x\ntitle: X\nmode: read-then-do\npauses:\n  - pause: One\n    items:\n";
    String item = "      - {do: Wait., source: common practice}\n";
    assertEquals(List.of(), messagesOf(pause + item.repeat(9)));
    assertEquals(List.of("the pause has 10 items"), messagesOf(pause + item.repeat(10)));
    assertTrue(
        new CardPrinter(files(pause + item.repeat(12)))
                .checklist("x", strip("X", "K7M", false), List.of(), policy("5.0"))
            instanceof Loaded.Good);
    assertTrue(
        new CardPrinter(files(pause + item.repeat(13)))
                .checklist("x", strip("X", "K7M", false), List.of(), policy("5.0"))
            instanceof Loaded.Broken);
  }

  @Test
  void aLineWithoutASourceIsRefused() {
    assertEquals(
        List.of("the line does not say its source"),
        messagesOf(
            "card: x\ntitle: X\nmode: read-then-do\npauses:\n  - {pause: One, items: [{do: Wait.}]}\n"));
  }

  private List<String> messages(PolicyView view) {
    return printer
        .checklist("before-first-use", strip("Before first use", "K7M", false), List.of(), view)
        .diagnostics()
        .stream()
        .map(Diagnostic::message)
        .toList();
  }

  private static List<String> messagesOf(String wording) {
    return new CardPrinter(files(wording))
        .checklist("x", strip("X", "K7M", false), List.of(), policy("5.0")).diagnostics().stream()
            .map(Diagnostic::message)
            .toList();
  }

  private static CardFiles files(String wording) {
    return name -> Loaded.good(SourceText.of(name, wording));
  }

  /** A number that a hospital decides is a value of the policy and never stands in the wording. */
  @Test
  void noNumberStandsInTheWording() throws IOException {
    String text = Files.readString(CARDS.resolve("before-first-use.yaml"));
    List<String> lines =
        text.lines()
            .filter(line -> line.contains("do:"))
            .filter(line -> line.matches(".*[0-9].*"))
            .toList();
    assertEquals(List.of(), lines);
  }

  @Test
  void everySourceOfTheWordingIsInTheBibliography() throws IOException {
    String text = Files.readString(CARDS.resolve("before-first-use.yaml"));
    String bibliography = Files.readString(CARDS.resolveSibling("sources/bibliography.yaml"));
    List<String> ids =
        Pattern.compile("[A-Z]{2}-[0-9]{2}[a-z]?")
            .matcher(text)
            .results()
            .map(r -> r.group())
            .toList();
    assertTrue(ids.size() >= 15, ids.toString());
    assertEquals(
        List.of(), ids.stream().filter(id -> !bibliography.contains("\n  " + id + ":")).toList());
  }

  /** The page goes to target/cards, where a person looks at it before it becomes the new golden. */
  private static void golden(String name, String page) throws IOException {
    Path looked = Path.of("target", "cards", name + ".html");
    Files.createDirectories(looked.getParent());
    Files.writeString(looked, page);
    try (InputStream in = CardsTest.class.getResourceAsStream("cards/" + name + ".html")) {
      assertTrue(in != null, "no golden page for " + name + "; look at " + looked);
      assertEquals(new String(in.readAllBytes(), StandardCharsets.UTF_8), page);
    }
  }

  private static int count(String text, String part) {
    return text.split(Pattern.quote(part), -1).length - 1;
  }

  static <T> T value(Loaded<T> loaded) {
    return loaded.match(
        value -> value,
        problems -> {
          throw new AssertionError(problems.get(0).render());
        });
  }
}
