package org.tidemark.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb sign-off. */
class SignOffTest {
  private static final String SHIPPED =
      "policies/src/main/resources/org/tidemark/policies/example-general-adult/policy.yaml";

  @TempDir private Path folder = Path.of("target");

  private Ran signOff(String... more) {
    String[] args = new String[more.length + 5];
    System.arraycopy(more, 0, args, 5, more.length);
    args[0] = "sign-off";
    args[1] = "--today";
    args[2] = "2026-11-25";
    args[3] = "--out";
    args[4] = folder.resolve("sheet.html").toString();
    return Ran.with(args);
  }

  private String sheet(String... more) throws IOException {
    Ran ran = signOff(more);
    assertEquals(0, ran.code(), ran::err);
    return Files.readString(folder.resolve("sheet.html"), UTF_8).replace("&nbsp;", " ");
  }

  /** The policy as it would be if one line read otherwise. */
  private String earlier(String line, String other) throws IOException {
    String text = Files.readString(Path.of(Repo.file(SHIPPED)), UTF_8);
    assertTrue(text.contains(line), "the line is there: " + line);
    Path copy = folder.resolve("earlier").resolve("example-general-adult");
    Files.createDirectories(copy);
    Files.writeString(copy.resolve("policy.yaml"), text.replace(line, other), UTF_8);
    return copy.toString();
  }

  @Test
  void aFirstEditionIsHeldAgainstNothing() throws IOException {
    String html = sheet();
    assertTrue(html.contains("No earlier edition was given to hold it against."), html);
    assertFalse(html.contains("Do not approve before this is settled"), "everything is proved");
  }

  @Test
  void theTableShowsTheAnswerAtEachLimitAndOneStepToEitherSide() throws IOException {
    String html = sheet();
    String ph = html.substring(html.indexOf("use. What did the strip read?"));
    String row = "<tr%s><th scope=\"row\">%s</th><td class=\"%s\"><strong>%s</strong>";
    String limit = " class=\"limit\"";
    assertTrue(ph.contains(String.format(row, "", "0.5 pH", "hold", "Do not feed")), ph);
    assertTrue(ph.contains(String.format(row, limit, "1.0 pH", "proceed", "Proceed")), ph);
    assertTrue(ph.contains(String.format(row, limit, "4.0 pH", "proceed", "Proceed")), ph);
    assertTrue(
        ph.contains(
            String.format(
                row, "", "4.5 pH. Who has read this strip? One person", "hold", "Do not feed")),
        ph);
    assertTrue(
        ph.contains(
            String.format(
                row,
                limit,
                "5.0 pH. Who has read this strip? Two, and they agree",
                "proceed",
                "Proceed")),
        ph);
    assertTrue(ph.contains(String.format(row, "", "5.5 pH", "hold", "Do not feed")), ph);
  }

  @Test
  void aChangedCutOffStandsOnTheSheetWithTheCasesAndTheCardsThatItChanges() throws IOException {
    String html =
        sheet("--since", earlier("    is: 5.0\n    unit: pH", "    is: 5.5\n    unit: pH"));
    assertTrue(
        html.contains("<th scope=\"row\">Number: ph cut off</th><td>5.5</td><td>5.0</td>"), html);
    assertTrue(
        html.contains("<h4>use: was Proceed, is now Do not feed, by the rule acid aspirate</h4>"),
        html);
    assertTrue(html.contains("<li>What did the strip read? 5.5 pH</li>"), html);
    assertTrue(html.contains("Every other case is answered as before."), html);
    assertTrue(html.contains("<td>ph: above 5.5</td><td>ph: above 5.0</td>"), html);
    assertTrue(html.contains("The policy says of the change: Stricter pH limit,"), html);
    assertTrue(html.contains("<li>before first use: take down "), html);
  }

  @Test
  void whatThePolicySaysIsAlwaysSoStandsOnTheSheet() throws IOException {
    String html = sheet();
    assertTrue(
        html.contains(
            "<th scope=\"row\">No tube is passed where experienced help to place it and to check it is not"
                + " at hand.</th><td>pass, given senior help: Not at hand: never Go ahead. <span"
                + " class=\"why\">Said by floor-england-adult (PR-04).</span></td><td>Proved</td>"),
        html);
  }

  @Test
  void anEqualEditionIsProvedEqual() throws IOException {
    String html = sheet("--since", "example-general-adult");
    assertTrue(html.contains("Nothing is written differently."), html);
    assertTrue(html.contains("No case is answered differently. This is proved"), html);
    assertTrue(html.contains("None: every card reads as before."), html);
  }

  @Test
  void itNeverWritesOverAFileUnasked() throws IOException {
    sheet();
    Ran again = signOff();
    assertEquals(2, again.code());
    assertTrue(
        again.err().contains("is there already. Give --replace to write over it"), again::err);
  }
}
