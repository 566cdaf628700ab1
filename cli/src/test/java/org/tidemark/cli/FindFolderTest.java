package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidemark.Tidemark;
import org.tidemark.guide.Ask;
import org.tidemark.guide.GuidanceShelf;
import org.tidemark.layer.EffectivePolicy;

/** A hospital's own guidance: added, replaced, withdrawn, and what happens when it is broken. */
class FindFolderTest {
  private static final String GOOD =
      "Ring the feeding team on this ward before a feed. The limit is pH $values.ph_cut_off. [PH-12]\n";

  @TempDir Path base;
  private Path hospital;

  @BeforeEach
  void folder() throws IOException {
    hospital = Files.createDirectories(base.resolve("example-general"));
    Files.createDirectories(hospital.resolve("guidance"));
    Files.writeString(
        hospital.resolve("words.yaml"),
        "words: example-general\nsame:\n  - words: [\"zebra trolley\", \"feed store\"]\n",
        StandardCharsets.UTF_8);
    article("feed-store", "", GOOD);
  }

  private void article(String name, String more, String body) throws IOException {
    String head =
        "---\narticle: %s\ntitle: Our own %s\nanswers: [where is the feed store]\nstage: any\n"
                .formatted(name, name)
            + "for: [adult]\ntubes: [feeding]\nurgency: routine\n";
    write(name, head + more + "---\n" + body);
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(
        hospital.resolve("guidance").resolve(name + ".md"), text, StandardCharsets.UTF_8);
  }

  private Ran find(String... more) {
    String[] all = new String[more.length + 3];
    all[0] = "find";
    all[1] = "--folder";
    all[2] = hospital.toString();
    System.arraycopy(more, 0, all, 3, more.length);
    return Ran.with(all);
  }

  private JsonNode first(String typed) {
    return Repo.json(find(typed, "--json").out()).path("hits").path(0);
  }

  @Test
  void anArticleIsAddedWithThePolicysNumberAndSaysWhoseItIs() {
    String text = find("where is the feed store", "--limit", "1").out();
    assertTrue(text.contains("is* pH 5.0."), text);
    assertTrue(text.contains("text of example-general; numbers of"), text);
    assertEquals("example-general", first("where is the feed store").path("origin").asText());
  }

  @Test
  void aSynonymIsAdded() {
    assertEquals("feed-store", first("zebra trolley").path("article").asText());
    Ran without = Ran.with("find", "zebra trolley", "--json");
    assertFalse(without.out().contains("feed-store"), without.out());
  }

  @Test
  void anArticleIsReplaced() throws IOException {
    article("blocked", "", "Use our own way. [common practice]\n");
    JsonNode hit = first("our own blocked");
    assertEquals("Our own blocked", hit.path("title").asText());
    assertEquals("example-general", hit.path("origin").asText());
  }

  @Test
  void anArticleIsWithdrawn() throws IOException {
    assertEquals("blocked", first("blocked tube").path("article").asText());
    write("blocked", "---\narticle: blocked\nwithdrawn: \"yes\"\nwhy: Ours is on paper.\n---\n");
    String all = find("blocked tube", "--json", "--limit", "60").out();
    assertFalse(all.contains("\"article\" : \"blocked\""), all);
  }

  @Test
  void anUnknownCitationIsAnErrorAtItsPlace() throws IOException {
    article("feed-store", "", "First.\n\nSecond. [XX-99]\n");
    refused("feed-store.md:12:10: error: the bibliography has no `XX-99`");
  }

  @Test
  void anUnknownValueIsAnErrorAtItsPlace() throws IOException {
    article("feed-store", "", "Wait $values.retest_wiat first.\n");
    refused("feed-store.md:10:6: error: there is no $values.retest_wiat here");
  }

  @Test
  void aBrokenTemplateIsAnErrorAtItsPlace() throws IOException {
    article("feed-store", "", "First.\n#if($stated.retest_wait)Wait.\n");
    refused("feed-store.md:12:1: error: the template cannot be read");
  }

  @Test
  void aDeadLinkIsAnErrorAtItsPlace() throws IOException {
    article("feed-store", "see-also: [blokced]\n", GOOD);
    refused("feed-store.md:9:12: error: no article is called `blokced`");
  }

  @Test
  void aFolderThatIsNotThereIsAnError() {
    Ran ran = Ran.with("find", "blocked", "--folder", base.resolve("nowhere").toString());
    assertEquals(2, ran.code());
    assertEquals("", ran.out());
    assertTrue(ran.err().contains("nowhere"), ran.err());
  }

  private void refused(String place) {
    Ran ran = find("where is the feed store");
    assertEquals(3, ran.code(), ran::toString);
    assertEquals("", ran.out());
    assertTrue(ran.err().contains(place), ran.err());
  }

  @Test
  void theLastGoodIndexStaysForAProgramThatRunsOn() throws IOException {
    Tidemark tidemark = Tidemark.builder().folder(hospital).build();
    GuidanceShelf shelf = tidemark.keptGuidance(demo(tidemark));
    assertFalse(shelf.stale());
    article("feed-store", "", "Second. [XX-99]\n");
    GuidanceShelf again = tidemark.keptGuidance(demo(tidemark));
    assertTrue(again.stale());
    assertEquals("the bibliography has no `XX-99`", again.diagnostics().get(0).message());
    Ask ask = Ask.of("where is the feed store");
    assertEquals("feed-store", again.search().orElseThrow().find(ask).hits().get(0).article());
  }

  private static EffectivePolicy demo(Tidemark tidemark) {
    return tidemark
        .demo()
        .match(
            policy -> policy,
            broken -> {
              throw new AssertionError(broken.toString());
            });
  }
}
