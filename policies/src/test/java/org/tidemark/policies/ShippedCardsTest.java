package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.model.Policy;
import org.tidemark.print.CardFiles;
import org.tidemark.print.CardPage;
import org.tidemark.print.Cards;
import org.tidemark.print.PolicyView;
import org.tidemark.print.PolicyViews;
import org.tidemark.print.TemplateFiller;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;

/** The cards of the shipped hospital, compared with pages that were looked at. */
class ShippedCardsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private static EffectivePolicy policy(Policy... layers) {
    return Shipped.sound(Layering.combine(Shipped.words().vocabulary(), List.of(layers)));
  }

  private static Cards cards(LocalDate day) {
    return new Cards(policy(Shipped.floor(), Shipped.hospital()), CardFiles.onClassPath(), day);
  }

  @Test
  void theHospitalHasAChecklistAndATrayForEachTypeOfTube() {
    assertEquals(
        List.of("before-first-use", "tray-fine-feeding", "tray-wide-single", "tray-double-sump"),
        cards(DAY).names());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"before-first-use", "tray-fine-feeding", "tray-wide-single", "tray-double-sump"})
  void eachIsThePageThatWasLookedAt(String name) throws IOException {
    Loaded<CardPage> page = cards(DAY).page(name);
    String html = Shipped.sound(page).html();
    Path looked = Path.of("target", "cards", name + ".html");
    Files.createDirectories(looked.getParent());
    Files.writeString(looked, html, StandardCharsets.UTF_8);
    assertEquals(List.of(), page.diagnostics(), "a shipped card has nothing to remark on");
    assertEquals(Shipped.text("policies/cards/" + name + ".html"), html);
  }

  @Test
  void everyNumberOnTheChecklistIsThePolicys() {
    String html = Shipped.sound(cards(DAY).page("before-first-use")).html().replace("&nbsp;", " ");
    for (String sentence :
        List.of(
            "The pH is 1.0 to 5.0, with nothing below against it.",
            "pH is not enough: liquid before first check; second reader needed; in the"
                + " airway before; hernia or old operation; not deep enough.",
            "Above pH 4.0, a second trained person reads it.",
            "Draw on the tube for at least 1 mL.",
            "Above pH 5.0: nothing down for 60 minutes, then test once more.",
            "Raise the head end to 30 degrees or more.")) {
      assertTrue(html.contains(sentence), sentence);
    }
  }

  @Test
  void noCardIsPrintedAfterTheReviewDate() {
    Loaded<CardPage> late = cards(LocalDate.of(2028, 9, 2)).page("before-first-use");
    assertEquals(
        List.of("the review date has passed; a card would be out of date when it is printed"),
        late.diagnostics().stream().map(Diagnostic::message).toList());
    assertEquals(
        "before-first-use",
        Shipped.sound(cards(LocalDate.of(2028, 9, 1)).page("before-first-use")).name());
  }

  @Test
  void noCardIsPrintedFromAFloor() {
    Cards floor = new Cards(policy(Shipped.floor()), CardFiles.onClassPath(), DAY);
    assertEquals(
        "no card is printed from floor-england-adult",
        floor.page("before-first-use").diagnostics().get(0).message());
  }

  @Test
  void aMistypedNameIsAnsweredWithTheNearest() {
    Diagnostic problem = cards(DAY).page("tray-fine-feding").diagnostics().get(0);
    assertEquals("this policy has no card called `tray-fine-feding`", problem.message());
    assertEquals("did you mean `tray-fine-feeding`?", problem.help().orElseThrow());
  }

  /** Each article of the guidance can be filled by the shipped hospital's policy. */
  @Test
  void theHospitalFillsEveryArticle() throws IOException {
    PolicyView view = PolicyViews.of(policy(Shipped.floor(), Shipped.hospital()));
    TemplateFiller filler = new TemplateFiller();
    Path guidance = Path.of("../content/src/main/resources/org/tidemark/content/guidance");
    int filled = 0;
    try (Stream<Path> files = Files.list(guidance)) {
      for (Path file : files.sorted().toList()) {
        SourceText source = SourceText.of(file.getFileName().toString(), Files.readString(file));
        int body = source.text().indexOf("\n---\n", 4) + 5;
        String markdown =
            Shipped.sound(filler.fill(source.span(body, source.text().length()), view));
        assertFalse(markdown.contains("$"), markdown);
        filled++;
      }
    }
    assertTrue(filled >= 40, "only " + filled);
  }

  @Test
  void theViewSaysWhatThePolicySays() {
    PolicyView view = PolicyViews.of(policy(Shipped.floor(), Shipped.hospital()));
    assertEquals("5.0", view.values().get("ph_cut_off"));
    assertEquals("60 minutes", view.values().get("retest_wait"));
    assertEquals("10 to 20 mL", view.values().get("fallback_air"));
    assertEquals("15 to 30 minutes", view.values().get("fallback_wait"));
    assertEquals("3 tries", view.values().get("tries_limit"));
    assertEquals("12 hours", view.values().get("check_every"));
    assertEquals("30 degrees", view.values().get("head_up"));
    assertEquals("21:00", view.values().get("night_from"));
    assertEquals("07:00", view.values().get("night_until"));
    assertEquals(false, view.stated().get("residual_limit"));
    assertEquals("1 Sep 2028", view.policy().get("review_by"));
    assertEquals(
        List.of(
            "Turn the patient onto the left side.",
            "Either push 10 to 20 mL of air, and no fluid, down the tube with a large enteral"
                + " syringe, or give mouth care.",
            "Wait 15 to 30 minutes, then draw on the tube again for at least 1 mL."),
        view.lists().get("fallback_steps"));
    assertEquals(
        List.of(
            "Nutrition nurse, 08:00 to 18:00, Monday to Friday.",
            "Otherwise: senior nurse in charge of the site, always."),
        view.lists().get("fallback_call"));
    assertTrue(
        view.lists()
            .getOrDefault("never_count", List.of())
            .contains("Bubbling: a tube in the lung need not bubble."),
        view.lists().toString());
  }
}
