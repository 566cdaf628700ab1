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

/** What a policy says of care beside its rules reaches the cards, the answers and the sheet. */
class CareTest {
  private static final String DEMO =
      "policies/src/main/resources/org/tidemark/policies/example-general-adult/policy.yaml";

  @TempDir private Path folder = Path.of("target");

  /** The invented hospital's policy with a line changed, as a ward's. */
  private String ward(String line, String other) throws IOException {
    String text =
        Files.readString(Path.of(Repo.file(DEMO)), UTF_8)
            .replace("policy: example-general-adult\n", "policy: ward-adult\n");
    assertTrue(text.contains(line), line);
    Path file = folder.resolve("policy.yaml");
    Files.writeString(file, text.replace(line, other), UTF_8);
    return file.toString();
  }

  private String card(String name, String policy) throws IOException {
    Path out = folder.resolve("card.html");
    Ran ran =
        Ran.with(
            "card",
            name,
            "--policy",
            policy,
            "--today",
            "2026-11-25",
            "--replace",
            "--out",
            out.toString());
    assertEquals(0, ran.code(), ran::err);
    return Files.readString(out, UTF_8).replace("&nbsp;", " ");
  }

  /** CP-03: what is dialled is printed digit for digit. */
  @Test
  void aNumberToCallIsPrintedAsItIsWritten() throws IOException {
    String policy = ward("{who: Nutrition nurse, ", "{who: Nurse, number: bleep 0412, ");
    String html = card("before-first-use", policy);
    assertTrue(html.contains("Nurse, bleep 0412, 08:00 to 18:00, Monday to Friday."), html);
  }

  @Test
  void anAnswerSaysTheHoursAndTheNumber() throws IOException {
    String policy = ward("{who: Nutrition nurse, ", "{who: Nutrition nurse, number: 08 010, ");
    Path findings = folder.resolve("findings.yaml");
    String nothing =
        Files.readString(Path.of(Repo.example("clear-check")), UTF_8)
            .replaceFirst("aspirate: obtained", "aspirate: none")
            .replaceAll("(?m)^  (ph|strip|ph-readers): .*\n", "");
    Files.writeString(findings, nothing, UTF_8);
    Ran ran = Ran.with("check", "--policy", policy, "--findings", findings.toString());
    assertEquals(0, ran.code(), ran::err);
    assertTrue(
        ran.out()
            .replaceAll("\\s+", " ")
            .contains("Nutrition nurse, 08 010. When: 08:00 to 18:00, Monday to Friday."),
        ran::out);
  }

  @Test
  void anAnswerSaysWhatIsWrittenDownWhenItsQuestionIsAsked() throws IOException {
    String policy =
        ward(
            "\nrecords:\n",
            "\nrecords:\n  each-shift: {fields: [Side of the nose], when-asked: [use]}\n");
    String findings = Repo.example("clear-check");
    Ran ran = Ran.with("check", "--policy", policy, "--findings", findings);
    assertEquals(0, ran.code(), ran::err);
    assertTrue(ran.out().contains("Side of the nose"), ran::out);
    assertTrue(ran.out().contains("Date, time, and who checked"), ran::out);
  }

  @Test
  void aTrayForSomePatientsSaysForWhomAndIsNoCardOfOthers() throws IOException {
    String line = "    title: Fine-bore feeding tube with a guide wire\n";
    String policy =
        ward(line, line + "    for: {population: adult, tube-purpose: [feeding, medicines]}\n");
    String html = card("tray-fine-feeding", policy);
    assertTrue(
        html.contains("adults; ward or emergency department; feed and medicines or medicines only"),
        html);
    assertFalse(card("tray-wide-single", policy).contains("medicines only"));
    Ran broken =
        Ran.with("card", "--list", "--policy", ward(line, line + "    for: {population: child}\n"));
    assertEquals(3, broken.code());
    assertTrue(
        broken.err().contains("the tray `fine-feeding` is for nobody whom the policy is for"),
        broken::err);
  }

  @Test
  void theSheetNamesAlertsThatAreAnsweredAndThoseThatAreNot() throws IOException {
    Path sheet = folder.resolve("sheet.html");
    Ran ran = Ran.with("sign-off", "--today", "2026-11-25", "--out", sheet.toString());
    assertEquals(0, ran.code(), ran::err);
    String html = Files.readString(sheet, UTF_8).replace("&nbsp;", " ");
    String answered =
        html.substring(
            html.indexOf("<h2>Alerts that it answers</h2>"),
            html.indexOf("<h2>Alerts that it does not answer</h2>"));
    String not =
        html.substring(
            html.indexOf("<h2>Alerts that it does not answer</h2>"),
            html.indexOf("<h2>Sources relied on</h2>"));
    assertTrue(answered.contains("(MT-07: NHS England."), answered);
    assertTrue(answered.contains("Answered by: guidance device."), answered);
    assertFalse(answered.contains("WR-04"), answered);
    assertTrue(not.contains("(WR-04: NHS England."), not);
    assertFalse(not.contains("(MT-07"), not);
  }
}
