package org.tidemark.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GuidanceSearchTest {
  private static Hit first(String typed) {
    return Fixture.search().find(Ask.of(typed)).hits().get(0);
  }

  @Test
  void aHitIsACitation() {
    Hit hit = first("oesophagus tip ph");
    assertEquals("ph-cutoff", hit.article());
    assertEquals("Which pH allows use", hit.title());
    assertEquals("What this does not rule out", hit.section());
    assertEquals("example-general-adult", hit.policy());
    assertEquals("3", hit.edition());
    assertEquals("for tests", hit.origin());
    assertEquals("test.md:2:10", hit.place().toString());
  }

  @Test
  void aSnippetIsTheArticlesOwnTextWithTheMatchMarked() {
    Hit hit = first("esophagus tip ph");
    assertEquals("A [tip] in the gullet, the [oesophagus].", hit.snippet().marked("[", "]"));
  }

  @Test
  void aSynonymOfSeveralWordsIsMarkedAsOnePiece() {
    Hit hit = Fixture.search().find(Ask.of("HOB")).hits().get(0);
    assertEquals("Keep the [head of bed] up.", hit.snippet().marked("[", "]"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "title:blocked",
        "+blocked -tube",
        "blocked AND (",
        "\"blocked",
        "blocked~2",
        "bl*cked",
        "blocked^9",
        "[a TO b]",
        "_exists_:title",
        "*:*",
        "blocked\\",
        "tag:act-now",
        "{!x}",
        "/b.*/"
      })
  void queryTextIsDataWhateverItLooksLike(String typed) {
    Found found = Fixture.search().find(Ask.of(typed));
    boolean aboutBlocked = typed.contains("blocked");
    assertTrue(
        !aboutBlocked || found.hits().get(0).article().equals("blocked"),
        () -> typed + " " + Fixture.names(found));
  }

  @ParameterizedTest
  @ValueSource(strings = {"*:*", "[* TO *]", "_exists_:title", "tag:Population", "{!x}"})
  void noSyntaxOpensEverything(String typed) {
    assertTrue(Fixture.search().find(Ask.of(typed).limit(30)).hits().size() < 5);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", " ", "\u0000", "\n\t\r", "???", "\uD83D\uDE00", "\uD83D", "\uFEFF", "---"})
  void nothingToLookForIsNoHitAndANote(String typed) {
    Found found = Fixture.search().find(Ask.of(typed));
    assertEquals(List.of(), found.hits());
    assertTrue(found.note().isPresent());
  }

  @Test
  void controlCharactersPartWordsAndEmojiHidesNothing() {
    assertEquals("blocked", first("ng\u0000blocked\u0007\uD83D\uDE00").article());
  }

  @Test
  void aQueryOfTenThousandCharactersIsCutAndAnswered() {
    Found found = Fixture.search().find(Ask.of("blocked " + "tube blocked ".repeat(800)));
    assertEquals("blocked", found.hits().get(0).article());
    assertEquals(QueryReader.LONGEST, found.reading().typed().length());
    Found one = Fixture.search().find(Ask.of("a".repeat(10_000)));
    assertEquals(List.of(), one.hits());
  }

  @Test
  void aCutNeverHalvesACharacter() {
    String typed = "x".repeat(QueryReader.LONGEST - 1) + "\uD83D\uDE00";
    assertEquals(
        QueryReader.LONGEST - 1, Fixture.search().find(Ask.of(typed)).reading().typed().length());
  }

  @ParameterizedTest
  @CsvSource({
    "feed in the lungs, aspiration-now",
    "pt thinks feed in her lungs, aspiration-now",
    "the patient aspirated, aspiration-now",
    "coughing with feed running, aspiration-now",
    "being sick during feed, aspiration-now",
    "coughing while passing the tube with feed running before, no-aspirate|confirm-first|blocked",
    "no coughing during feed, start-feed",
  })
  void wordsOfAnEmergencyPutItsArticleFirst(String typed, String first) {
    String found = first(typed).article();
    if (first.equals("aspiration-now")) {
      assertEquals(first, found);
    } else {
      assertFalse(found.equals("aspiration-now"), found);
    }
  }

  @Test
  void filtersLeaveOutButNeverAnArticleForEmergencies() {
    GuidanceFilter newborn = GuidanceFilter.ALL.population(Population.NEWBORN);
    List<String> found =
        Fixture.names(Fixture.search().find(Ask.of("feed tube").filter(newborn).limit(30)));
    assertTrue(found.contains("aspiration-now"), found::toString);
    assertFalse(found.contains("start-feed"), found::toString);
    assertFalse(found.contains("blocked"), found::toString);
  }

  @Test
  void everyFilterHoldsForEveryHit() {
    GuidanceFilter filter =
        GuidanceFilter.ALL.population(Population.CHILD).tube(TubeKind.DRAINAGE).stage(Stage.DURING);
    List<String> found =
        Fixture.names(Fixture.search().find(Ask.of("the tube feed test").filter(filter).limit(30)));
    List<String> allowed =
        List.of("aspiration-now", "no-aspirate", "confirm-first", "ph-cutoff", "ph-high");
    assertTrue(allowed.containsAll(found), found::toString);
    assertTrue(found.size() > 1, found::toString);
  }

  @ParameterizedTest
  @CsvSource({
    "ph 5.5 can i feed, ph-cutoff",
    "'pH 5,5 NG', ph-cutoff",
    "ph5.5, ph-cutoff",
    "ph 5 or less or 5.5, ph-cutoff",
    "ph 8, ph-high",
    "PH 6, ph-high",
    "14 fr tube, tube-choice",
  })
  void aNumberLeadsToTheArticleThatSpeaksOfIt(String typed, String first) {
    assertEquals(first, first(typed).article());
  }

  @Test
  void aHitShowsWhatThePolicySaysAtTheNumber() {
    assertEquals(Optional.of("at 5.5 this policy was asked"), first("pH 5,5").atThisNumber());
    assertEquals(Optional.empty(), first("tube blocked 5.5").atThisNumber());
  }

  @Test
  void withoutACutOffANumberStillFindsTheArticleOfTheLimit() {
    GuidanceSearch bare = Fixture.index().search(PolicyContext.of("x", "1"));
    assertEquals("ph-cutoff", Fixture.names(bare.find(Ask.of("ph 7"))).get(0));
  }

  @Test
  void numbersAndTheirUnitsAreRead() {
    assertEquals(
        List.of(new QueryReading.Measured(new BigDecimal("2"), "cm")),
        Fixture.search().find(Ask.of("moved 2cm")).reading().numbers());
    assertEquals(
        List.of(
            new QueryReading.Measured(new BigDecimal("5.5"), "ph"),
            new QueryReading.Measured(new BigDecimal("30"), "ml")),
        NumberReader.numbers("pH 5,5 and 30mls"));
    assertEquals(
        List.of(new QueryReading.Measured(new BigDecimal("250"), "ml")),
        NumberReader.numbers("residual 250 cc"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"urine ph", "wound aspirate", "staff car park", "asdfgh", "zzz yyy xxx tube"})
  void whatNoArticleCoversGetsNoHitAndAReason(String typed) {
    Found found = Fixture.search().find(Ask.of(typed));
    assertEquals(List.of(), found.hits());
    assertTrue(found.note().orElseThrow().length() > 10);
  }

  @ParameterizedTest
  @CsvSource({"peg, other-routes", "peg ph, other-routes", "PEJ care, other-routes"})
  void anExcludedAreaShowsItsPointerFirst(String typed, String first) {
    assertEquals(first, first(typed).article());
    assertTrue(first(typed).pointer());
  }

  @Test
  void anExplanationSaysInPlainWordsWhatStandsWhere() {
    Hit hit = Fixture.search().find(Ask.of("ngt clogegd").explained()).hits().get(0);
    assertEquals(
        List.of(
            "\"clogegd\" was read as \"clogged\"",
            "\"ngt\" stands here in the questions it answers",
            "\"clog\" stands here as \"block\" in the title, the questions it answers"),
        hit.reasons());
    assertEquals(List.of(), first("ngt").reasons());
  }

  @Test
  void anExplanationSaysWhyAnArticleWasMovedUp() {
    List<String> reasons =
        Fixture.search().find(Ask.of("feed in lungs").explained()).hits().get(0).reasons();
    assertEquals("put first, since these words describe an emergency", reasons.get(0));
  }

  @Test
  void suggestionsFollowTheLettersTyped() {
    assertEquals(
        List.of("gastric residual volume high"), Fixture.index().suggest("gastric res", 5));
    assertEquals(List.of("no aspirate"), Fixture.index().suggest("no asp", 5));
    assertEquals(
        List.of("feed in the lungs", "Feed may be in the lungs"),
        Fixture.index().suggest("lungs fee", 5));
    assertEquals(List.of(), Fixture.index().suggest("", 5));
    assertEquals(List.of(), Fixture.index().suggest("zzz", 5));
    assertEquals(2, Fixture.index().suggest("f", 2).size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr", "de", "ar", "th"})
  void theLanguageOfTheMachineChangesNothing(String language) {
    List<String> queries = List.of("NIL BY MOUTH", "INSERT ID ph 5,5", "IS IT IN", "Positon");
    List<Found> here =
        queries.stream().map(q -> Fixture.search().find(Ask.of(q).explained())).toList();
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag(language));
    try {
      GuidanceSearch there =
          Fixture.good(GuidanceIndex.of(Fixture.articles(), Fixture.words()))
              .search(Fixture.policy());
      for (int i = 0; i < queries.size(); i++) {
        Found found = there.find(Ask.of(queries.get(i)).explained());
        assertEquals(Fixture.names(here.get(i)), Fixture.names(found));
        assertEquals(here.get(i).reading(), found.reading());
        assertEquals(
            here.get(i).hits().stream().map(Hit::reasons).toList(),
            found.hits().stream().map(Hit::reasons).toList());
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void theOrderOfTheFilesChangesNothing() {
    List<FilledArticle> turned = new java.util.ArrayList<>(Fixture.articles());
    java.util.Collections.reverse(turned);
    GuidanceSearch other =
        Fixture.good(GuidanceIndex.of(turned, Fixture.words())).search(Fixture.policy());
    for (String typed : List.of("tube", "feed", "ph", "check the position", "test")) {
      assertEquals(
          Fixture.names(Fixture.search().find(Ask.of(typed).limit(30))),
          Fixture.names(other.find(Ask.of(typed).limit(30))));
    }
  }
}
