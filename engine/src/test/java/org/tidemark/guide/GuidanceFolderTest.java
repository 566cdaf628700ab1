package org.tidemark.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidemark.source.Loaded;

class GuidanceFolderTest {
  @TempDir Path base;
  @TempDir Path hospital;

  @BeforeEach
  void files() throws IOException {
    write(base, "flush", "routine", "see-also: [blocked, act]", "Use water. [LA-25]");
    write(base, "blocked", "routine", "", "Try warm water.");
    write(base, "act", "act-now", "", "Stop the feed.");
    Files.writeString(
        base.resolve("words.yaml"),
        "words: base\nurgent:\n  - article: act\n    phrases: [\"choking\"]\n");
  }

  private static void write(Path folder, String id, String urgency, String more, String body)
      throws IOException {
    file(
        folder,
        id,
        "article: %s\ntitle: About %s\nanswers: [%s question]\nstage: any\nfor: [adult]\n"
                .formatted(id, id, id)
            + "tubes: [feeding]\nurgency: "
            + urgency
            + "\n"
            + (more.isEmpty() ? "" : more + "\n"),
        body);
  }

  private static void file(Path folder, String id, String head, String body) throws IOException {
    Files.createDirectories(folder.resolve("guidance"));
    Files.writeString(
        folder.resolve("guidance").resolve(id + ".md"), "---\n" + head + "---\n" + body + "\n");
  }

  private Guidance below() {
    return Fixture.good(GuidanceFolder.read(base, "Tidemark"));
  }

  private Loaded<Guidance> both() {
    return GuidanceFolder.read(below(), hospital, "Example General");
  }

  private static GuidanceSearch search(Guidance guidance) {
    List<FilledArticle> filled =
        guidance.articles().stream().map(a -> new FilledArticle(a, a.body().value())).toList();
    return Fixture.good(GuidanceIndex.of(filled, guidance.words())).search(Fixture.policy());
  }

  @Test
  void aHospitalsArticleAddsOrReplacesAndItsHitsSaySo() throws IOException {
    write(hospital, "flush", "routine", "", "Use sterile water here.");
    write(hospital, "parking", "routine", "", "The lift is broken.");
    GuidanceSearch search = search(Fixture.good(both()));
    Hit flush = search.find(Ask.of("flush question")).hits().get(0);
    assertEquals("Example General", flush.origin());
    assertEquals("Use sterile water here.", flush.snippet().text());
    assertEquals("Tidemark", search.find(Ask.of("blocked")).hits().get(0).origin());
    assertEquals("parking", search.find(Ask.of("parking")).hits().get(0).article());
  }

  @Test
  void aWithdrawnArticleIsGoneAndNothingPointsAtIt() throws IOException {
    file(hospital, "blocked", "article: blocked\nwithdrawn: \"yes\"\nwhy: Call the team.\n", "");
    Guidance guidance = Fixture.good(both());
    assertEquals(Map.of("blocked", "Call the team."), guidance.withdrawn());
    assertEquals(List.of("act", "flush"), guidance.articles().stream().map(Article::name).toList());
    assertEquals(
        List.of("act"),
        guidance.articles().get(1).seeAlso().stream().map(Object::toString).toList());
    assertEquals(
        List.of(),
        search(guidance).find(Ask.of("warm water blocked")).hits().stream()
            .filter(hit -> hit.article().equals("blocked"))
            .toList());
  }

  @Test
  void aHospitalsSynonymWorks() throws IOException {
    Files.writeString(
        hospital.resolve("words.yaml"),
        "words: ours\nsame:\n  - words: [\"bunged up\", \"blocked\"]\n");
    assertEquals(
        "blocked",
        search(Fixture.good(both())).find(Ask.of("tube bunged up")).hits().get(0).article());
  }

  @Test
  void anArticleForEmergenciesCannotBeTakenAwayOrMadeRoutine() throws IOException {
    file(hospital, "act", "article: act\nwithdrawn: \"yes\"\nwhy: No.\n", "");
    assertTrue(
        Fixture.errors(both())
            .get(0)
            .endsWith(
                "act.md:2:10: `act` is for emergencies and may only be replaced by one that is"));
    write(hospital, "act", "routine", "", "Stop.");
    assertEquals(1, Fixture.errors(both()).size());
    write(hospital, "act", "act-now", "", "Stop.");
    assertEquals(3, Fixture.good(both()).articles().size());
  }

  @Test
  void everyProblemOfEveryFileIsReportedAtOnce() throws IOException {
    file(hospital, "broken", "article: broken\n", "Text.");
    file(hospital, "gone", "article: gon\nwithdrawn: \"yes\"\nwhy: x\n", "");
    Files.writeString(hospital.resolve("words.yaml"), "words: ours\nsames: []\n");
    List<String> errors = Fixture.errors(both());
    assertTrue(errors.stream().anyMatch(e -> e.contains("broken.md:2:1: the article has no")));
    assertTrue(
        errors.stream().anyMatch(e -> e.contains("no article is called `gon`, so it cannot")));
    assertTrue(errors.stream().anyMatch(e -> e.contains("words.yaml:2:1: the word list has no")));
  }

  @Test
  void aFileThatIsNotReadIsSaid() throws IOException {
    Files.createDirectories(hospital.resolve("guidance"));
    Files.writeString(hospital.resolve("guidance").resolve("flush.md.txt"), "x");
    Loaded<Guidance> read = both();
    assertEquals("this file is not read", read.diagnostics().get(0).message());
  }

  @Test
  void aDeadLinkIsAnErrorAtItsPlace() throws IOException {
    write(hospital, "new", "routine", "see-also: [flsh]", "Text.");
    List<FilledArticle> filled =
        Fixture.good(both()).articles().stream()
            .map(a -> new FilledArticle(a, a.body().value()))
            .toList();
    String error = Fixture.errors(GuidanceIndex.of(filled, Words.NONE)).get(0);
    assertTrue(error.endsWith("new.md:9:12: no article is called `flsh`"), error);
  }

  @Test
  void anUnknownSourceIsAnErrorAtItsPlace() {
    List<String> unknown =
        Citations.unknown(below().articles(), Set.of("LA-26")).stream()
            .map(d -> d.at().line() + " " + d.message())
            .toList();
    assertEquals(List.of("11 the bibliography has no `LA-25`"), unknown);
    assertEquals(List.of(), Citations.unknown(below().articles(), Set.of("LA-25")));
  }

  @Test
  void theLastGoodIndexStaysWhenTheNextIsBroken() {
    GuidanceShelf shelf = new GuidanceShelf();
    assertTrue(shelf.search().isEmpty());
    GuidanceSearch good = Fixture.search();
    shelf.offer(Loaded.good(good));
    assertFalse(shelf.stale());
    Words dead = Fixture.words("same:\n  - words: [\"---\", \"dash\"]\n");
    shelf.offer(
        GuidanceIndex.of(List.of(), dead)
            .match(
                index -> Loaded.good(index.search(PolicyContext.of("example", "1"))),
                Loaded::broken));
    assertEquals(good, shelf.search().orElseThrow());
    assertTrue(shelf.stale());
    assertEquals("dead-word", shelf.diagnostics().get(0).code().id());
    shelf.offer(Loaded.good(good));
    assertFalse(shelf.stale());
    assertEquals(List.of(), shelf.diagnostics());
  }
}
