package org.tidemark.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;

/** What goes wrong in searches of clinical text, as public reports of other projects tell it. */
class SearchPitfallsTest {
  private static final GuideAnalyzer TEXTS = GuideAnalyzer.forTexts(Fixture.words());

  @ParameterizedTest
  @CsvSource({
    "no aspirate, no-aspirate",
    "NO ASPIRATE, no-aspirate",
    "NG not in stomach, confirm-first",
    "is it in, confirm-first",
    "when not to feed, start-feed",
    "cant aspirate, no-aspirate",
    "can't aspirate, no-aspirate",
    "can\u2019t aspirate, no-aspirate",
  })
  void noAndNotAreKept(String typed, String first) {
    assertEquals(first, Fixture.find(typed).get(0));
  }

  @Test
  void aWordThatIsDeniedCountsForMoreThanTheWordAlone() {
    List<FilledArticle> two =
        List.of(
            Fixture.simple("do", "feed", "Feed now, feed later, feed at night."),
            Fixture.simple("not", "a high reading", "Do not feed. Feed waits."));
    GuidanceSearch search =
        Fixture.good(GuidanceIndex.of(two, Fixture.words("light: [do, not]")))
            .search(Fixture.policy());
    assertEquals("not", Fixture.names(search.find(Ask.of("dont feed"))).get(0));
    assertEquals("do", Fixture.names(search.find(Ask.of("feed"))).get(0));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cant",
        "can't",
        "can\u2019t",
        "cannot",
        "wont",
        "won't",
        "dont",
        "don't",
        "doesnt",
        "didnt",
        "didn\u2019t",
        "isnt",
        "wasnt",
        "hasnt",
        "couldnt",
        "shouldn't",
        "wouldnt",
        "mustn't",
        "not",
        "NOT"
      })
  void everyWayOfSayingNotIsNot(String typed) {
    assertEquals(List.of("not"), Terms.words(TEXTS, typed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"no", "nor", "none", "without", "the", "is", "it", "in", "to", "be"})
  void noWordAtAllIsDropped(String typed) {
    assertEquals(1, Terms.words(TEXTS, typed).size());
  }

  @Test
  void aQuestionOfLightWordsOnlyCountsThemInFull() {
    Found found = Fixture.search().find(Ask.of("is it in"));
    assertEquals("confirm-first", found.hits().get(0).article());
  }

  static Stream<Arguments> apart() {
    return Fixture.words().apart().stream()
        .map(Words.Group::phrases)
        .map(words -> Arguments.of(words.get(0).value(), words.get(1).value()));
  }

  @ParameterizedTest
  @MethodSource("apart")
  void wordsThatMustStayApartKeepDifferentStems(String one, String other) {
    assertNotEquals(Terms.words(TEXTS, one), Terms.words(TEXTS, other));
  }

  @ParameterizedTest
  @CsvSource({
    "aspiration, aspiration-now",
    "patient aspirated, aspiration-now",
    "positive, positive-culture",
    "organ, organ",
  })
  void eachOfTwoLikeWordsFindsItsOwn(String typed, String first) {
    assertEquals(first, Fixture.find(typed).get(0));
  }

  @Test
  void aspirateDoesNotFindAspirationAtAll() {
    List<FilledArticle> two =
        List.of(
            Fixture.simple("fluid", "aspirate", "Test the fluid."),
            Fixture.simple("lungs", "aspiration", "Call for help."));
    GuidanceIndex index =
        Fixture.good(
            GuidanceIndex.of(
                two,
                Fixture.words("keep: [aspirate, aspiration]\napart: [[aspirate, aspiration]]")));
    GuidanceSearch search = index.search(Fixture.policy());
    assertEquals(List.of("fluid"), Fixture.names(search.find(Ask.of("aspirate"))));
    assertEquals(List.of("lungs"), Fixture.names(search.find(Ask.of("aspiration"))));
  }

  @Test
  void wordsThatTheStemmerMergesAreReportedWithTheirLine() {
    Problems problems = new Problems();
    Words merged = Fixture.words("apart:\n  - [aspirate, aspirated]");
    Apart.tryOut(merged, GuideAnalyzer.forTexts(merged), problems);
    assertEquals(
        "words.yaml:3:6: `aspirate` and `aspirated` come out as one word",
        problems.sorted().get(0).at() + ": " + problems.sorted().get(0).message());
  }

  static Stream<Arguments> rules() {
    return Fixture.words().same().stream()
        .flatMap(group -> pairs(group.phrases().stream().map(Located::value).toList()));
  }

  private static Stream<Arguments> pairs(List<String> phrases) {
    return phrases.stream()
        .flatMap(
            one ->
                phrases.stream()
                    .filter(other -> !other.equals(one))
                    .map(other -> Arguments.of(one, other)));
  }

  @ParameterizedTest
  @MethodSource("rules")
  void everyPhraseFindsTheTextThatOnlyHoldsAnother(String typed, String written) {
    List<FilledArticle> articles =
        List.of(
            Fixture.simple("wanted", "zzz " + written + " yyy", "Nothing else."),
            Fixture.simple("other", "something quite different", "Nothing else."));
    Words words =
        new Words(
            Fixture.words().same(),
            List.of(),
            Fixture.words().keep(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    GuidanceSearch search =
        Fixture.good(GuidanceIndex.of(articles, words)).search(Fixture.policy());
    assertEquals("wanted", Fixture.names(search.find(Ask.of(typed))).get(0));
  }

  @ParameterizedTest
  @CsvSource({
    "NGT blocked, blocked",
    "nasogastric tube clogged, blocked",
    "gastric residual volume high, grv",
    "GRV high, residual-words",
    "head of the bed, head-up",
    "HOB, head-up",
    "NPO, fasting",
    "chest film by xray, xray",
  })
  void synonymsOfSeveralWordsWorkBothWaysInsideAQuery(String typed, String among) {
    List<String> found = Fixture.find(typed);
    assertTrue(found.indexOf(among) == 0 || found.indexOf(among) == 1, found::toString);
  }

  @ParameterizedTest
  @ValueSource(strings = {"NBM", "nil by mouth", "Head Of Bed", "CHEST X-RAY", "x\u2011ray"})
  void noRuleIsDeadForItsCapitalsHyphensOrSmallWords(String typed) {
    GuideAnalyzer queries = Synonyms.chain(TEXTS, Fixture.words(), new Problems());
    assertTrue(Segments.of(queries, typed).readings().size() > 1);
  }

  @Test
  void aRuleThatCanNeverFireIsAnErrorAtItsLine() {
    Words dead = Fixture.words("same:\n  - words: [\"---\", \"dash\"]\n");
    assertEquals(
        List.of("words.yaml:3:13: `---` has no word in it"),
        Fixture.errors(GuidanceIndex.of(List.of(), dead)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ngt", "ogt", "peg", "pej", "nj", "nbm", "npo", "grv", "hobs", "njt"})
  void noShortWordIsEverTakenForAnother(String typed) {
    QueryReading reading = Fixture.search().find(Ask.of(typed)).reading();
    assertEquals(List.of(), reading.corrections());
  }

  @ParameterizedTest
  @CsvSource({
    "blokced, blocked",
    "positon, position",
    "stomahc, stomach",
    "asprate, aspirate",
    "asparition, aspiration",
  })
  void aSlipInALongWordIsMended(String typed, String taken) {
    QueryReading reading = Fixture.search().find(Ask.of(typed)).reading();
    assertEquals(List.of(new QueryReading.Correction(typed, taken)), reading.corrections());
  }

  @Test
  void aWordThatExistsIsNeverTakenForANearOne() {
    List<FilledArticle> near =
        List.of(
            Fixture.simple("one", "the strap is loose", "Text."),
            Fixture.simple("two", "the strip is old", "Text."));
    GuidanceSearch search =
        Fixture.good(GuidanceIndex.of(near, Words.NONE)).search(Fixture.policy());
    assertEquals("two", Fixture.names(search.find(Ask.of("strip"))).get(0));
    assertEquals("one", Fixture.names(search.find(Ask.of("strap"))).get(0));
  }

  @Test
  void noSlipLeadsAcrossWordsThatMustStayApart() {
    List<FilledArticle> high = List.of(Fixture.simple("high", "hyperglycaemia", "High sugar."));
    GuidanceSearch search =
        Fixture.good(GuidanceIndex.of(high, Fixture.words("apart: [[hypo, hyper]]")))
            .search(Fixture.policy());
    Found found = search.find(Ask.of("hypoglycaemia"));
    assertEquals(List.of(), found.reading().corrections());
    assertEquals(List.of(), found.hits());
  }

  @Test
  void whereTwoApartWordsAreEquallyNearNobodyGuesses() {
    Vocabulary vocabulary = new Vocabulary(new Apart(Fixture.words()));
    vocabulary.add(List.of("aspirate", "aspirated"));
    assertTrue(vocabulary.nearest("aspirateg").isEmpty());
    assertFalse(vocabulary.nearest("aspirrate").isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"nj", "NJ", "nj position", "nj check before feed", "post-pyloric feed"})
  void aTubeBeyondTheStomachNeverMeetsStomachRulesFirst(String typed) {
    assertEquals("nj", Fixture.find(typed).get(0));
  }

  @ParameterizedTest
  @CsvSource({
    "oesophagus, esophagus",
    "colour, color",
    "manoeuvre, maneuver",
    "diarrhoea, diarrhea",
    "haemorrhage, hemorrhage",
    "anaesthetic, anesthetic",
    "litres, liters",
    "sterilised, sterilized",
    "sterilisation, sterilization",
    "labelled, labeled",
    "sulphate, sulfate",
    "odour, odor",
    "centimetre, centimeter",
    "paediatric, pediatric",
  })
  void britishAndAmericanSpellingsAreOneWord(String british, String american) {
    assertEquals(Terms.words(TEXTS, british), Terms.words(TEXTS, american));
  }

  @ParameterizedTest
  @CsvSource({"four, for", "hour, hor", "poem, pem", "wise, wize"})
  void shortWordsAreNotRespelled(String word, String other) {
    assertNotEquals(Terms.words(TEXTS, other), Terms.words(TEXTS, word));
  }
}
