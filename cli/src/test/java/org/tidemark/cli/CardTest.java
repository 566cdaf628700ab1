package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb card. */
class CardTest {
  @TempDir private Path folder = Path.of("target");

  private Ran card(String... more) {
    String[] args = new String[more.length + 3];
    System.arraycopy(more, 0, args, 3, more.length);
    args[0] = "card";
    args[1] = "--today";
    args[2] = "2026-11-25";
    return Ran.with(args);
  }

  @Test
  void theListHasTheChecklistAndThreeTrays() {
    assertEquals(
        new Ran(0, "before-first-use\ntray-fine-feeding\ntray-wide-single\ntray-double-sump\n", ""),
        card("--list"));
  }

  @Test
  void itWritesThePage() throws IOException {
    Path file = folder.resolve("card.html");
    Ran ran = card("before-first-use", "--out", file.toString(), "--json");
    assertEquals(0, ran.code(), ran::err);
    JsonNode json = Repo.json(ran.out());
    assertEquals("before-first-use", json.path("card").asText());
    assertEquals(file.toString(), json.path("file").asText());
    String html = Files.readString(file, UTF_8);
    assertTrue(
        html.contains("<li>The pH is 1.0&nbsp;to 5.0, with nothing below against it.</li>"), html);
  }

  @Test
  void itNeverWritesOverAFileUnasked() throws IOException {
    Path file = folder.resolve("card.html");
    Files.writeString(file, "mine", UTF_8);
    Ran ran = card("before-first-use", "--out", file.toString());
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("is there already. Give --replace to write over it"), ran::err);
    assertEquals("mine", Files.readString(file, UTF_8));
    assertEquals(0, card("before-first-use", "--out", file.toString(), "--replace").code());
    assertTrue(Files.readString(file, UTF_8).contains("<html"), "replaced");
  }

  @Test
  void aMistypedNameGetsTheNearest() {
    Ran ran = card("tray-fine-feding");
    assertEquals(2, ran.code());
    assertTrue(ran.err().contains("did you mean `tray-fine-feeding`?"), ran::err);
  }

  @Test
  void nothingIsPrintedAfterTheReviewDate() {
    Ran ran =
        Ran.with(
            "card",
            "before-first-use",
            "--today",
            "2028-09-02",
            "--out",
            folder.resolve("late.html").toString());
    assertEquals(3, ran.code());
    assertTrue(ran.err().contains("the review date has passed"), ran::err);
    assertTrue(Files.notExists(folder.resolve("late.html")), "nothing is written");
  }
}
