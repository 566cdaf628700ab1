package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.tidemark.count.Derived;
import org.tidemark.count.Deriving;
import org.tidemark.decide.DoesNotCount;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.load.Fields;
import org.tidemark.load.FindingsLoader;
import org.tidemark.load.RecordLoader;
import org.tidemark.model.Findings;
import org.tidemark.model.TubeRecord;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/** What readings in a tube's record come to, by tables that anybody can read; invented. */
class CountsTest {
  private static final EffectivePolicy POLICY = Shipped.policy(Shipped.HOSPITAL);

  @TestFactory
  Stream<DynamicTest> films() {
    return table("films.yaml");
  }

  @TestFactory
  Stream<DynamicTest> phReadings() {
    return table("ph-readings.yaml");
  }

  @TestFactory
  Stream<DynamicTest> lengths() {
    return table("lengths.yaml");
  }

  @TestFactory
  Stream<DynamicTest> events() {
    return table("events.yaml");
  }

  /** The same film and a floor: it leaves the readers to the hospital, so nothing counts there. */
  @Test
  void aPolicyThatDoesNotSayWhoMayReadLetsNoFilmCount() {
    TubeRecord record = record("film-readings: [{reader: radiologist, result: stomach}]");
    Derived derived =
        Shipped.sound(Deriving.of(Shipped.policy(Shipped.FLOOR)).derive(Findings.NONE, record));
    assertEquals("none or not-enough", words(derived, "film"));
    assertTrue(
        derived.notCounted().stream()
            .map(DoesNotCount::because)
            .anyMatch("This policy does not say who may read an X-ray."::equals));
  }

  @Test
  void whatIsEnteredAndRecordedOtherwiseIsRefusedWithBothPlaces() {
    TubeRecord record = record(AIRWAY);
    String said =
        Deriving.of(POLICY).derive(entered("film: none"), record).match(d -> "", CountsTest::first);
    assertEquals(
        """
        findings.yaml:1:1: error: `film` is entered as none, and the tube's record yields airway [entered-twice]
          1 | film: none
            | ^^^^^^^^^^
          record.yaml:1:17: the record begins here
          1 | %s
            |                 %s
          help: delete what was entered, or correct the record
        """
            .formatted(AIRWAY, "^".repeat(AIRWAY.length() - 17)),
        said);
  }

  @Test
  void whatIsEnteredAndRecordedAlikeIsAccepted() {
    Derived derived =
        Shipped.sound(Deriving.of(POLICY).derive(entered("film: airway"), record(AIRWAY)));
    assertEquals("airway", words(derived, "film"));
  }

  /** To tell of a pH that may not be there would be to tell that fluid came. */
  @Test
  void whatHangsOnSomethingOpenIsNotTold() {
    String unsure = "ph-readings: [{check: this-one, ph: 4.0, strip: gastric}]";
    Derived derived = Shipped.sound(Deriving.of(POLICY).derive(Findings.NONE, record(unsure)));
    assertEquals("not-attempted or obtained", words(derived, "aspirate"));
    assertEquals("nothing known", words(derived, "ph"));
    assertEquals("nothing known", words(derived, "strip"));
  }

  @Test
  void whatTheRecordLeavesOpenCannotBeEnteredBeside() {
    String unsure = "ph-readings: [{check: this-one, ph: 4.0}]";
    String said =
        Deriving.of(POLICY)
            .derive(entered("strip: gastric"), record(unsure))
            .match(d -> "", CountsTest::first);
    assertTrue(
        said.contains(
            "`strip` is entered as gastric, and the tube's record leaves it open [entered-twice]"),
        said);
  }

  @Test
  void whatCannotBeBesideTheRecordIsRefused() {
    String extra = "film-extra: collapsed-lung";
    String none =
        "film-readings: [{passing: this-one, check: this-one, this-patient: \"yes\", report: first, state: requested}]";
    String said =
        Deriving.of(POLICY).derive(entered(extra), record(none)).match(d -> "", CountsTest::first);
    assertTrue(
        said.contains(
            "`film-extra` cannot be collapsed-lung while `film` is requested [contradiction]"),
        said);
  }

  @Test
  void aListOfWhichThePolicySaysNothingIsRefused() {
    String residuals = "residuals: [{volume: 60}]";
    String said =
        Deriving.of(POLICY)
            .derive(Findings.NONE, record(residuals))
            .match(d -> "", CountsTest::first);
    assertEquals(
        """
        record.yaml:1:13: error: `example-general-adult` does not say what counts of `residuals` [not-counted]
          1 | residuals: [{volume: 60}]
            |             ^^^^^^^^^^^^
          help: enter what it shows among the findings, or say under `counts` in the policy what counts
        """,
        said);
  }

  private static final String AIRWAY =
      "film-readings: [{passing: this-one, check: this-one, this-patient: \"yes\", report: first, result: airway}]";

  private static Findings entered(String yaml) {
    return Shipped.sound(
        new YamlReader()
            .read(
                SourceText.of("findings.yaml", yaml),
                root -> FindingsLoader.load(root, POLICY.vocabulary())));
  }

  private static String first(List<Diagnostic> errors) {
    return errors.get(0).render();
  }

  private static Stream<DynamicTest> table(String name) {
    Problems problems = new Problems();
    List<DynamicTest> tests =
        new YamlReader()
            .read(
                SourceText.of(name, text(name)),
                root ->
                    Loaded.good(
                        Fields.of(root, name, problems).list("cases", n -> row(n, problems))))
            .match(
                all -> all,
                errors -> {
                  throw new AssertionError(errors.get(0).render());
                });
    assertEquals(List.of(), problems.sorted());
    assertTrue(tests.size() > 10, name);
    return tests.stream();
  }

  private static DynamicTest row(YamlNode node, Problems problems) {
    Fields fields = new Fields((org.tidemark.yaml.YamlMap) node, "a case", problems);
    String finding = fields.text("finding").value();
    List<String> is = fields.texts("is").stream().map(Located::value).toList();
    List<String> because = fields.texts("not-counted").stream().map(Located::value).toList();
    List<String> due = fields.texts("due").stream().map(Located::value).toList();
    YamlNode record = fields.required("record").orElseThrow();
    Findings beside =
        fields
            .optional("findings")
            .map(n -> Shipped.sound(FindingsLoader.load(n, POLICY.vocabulary())))
            .orElse(Findings.NONE);
    return DynamicTest.dynamicTest(
        fields.text("case").value(), () -> check(finding, is, because, due, beside, record));
  }

  private static void check(
      String finding,
      List<String> is,
      List<String> because,
      List<String> due,
      Findings beside,
      YamlNode record) {
    TubeRecord read = Shipped.sound(RecordLoader.load(record, POLICY.vocabulary()));
    Derived derived = Shipped.sound(Deriving.of(POLICY).derive(beside, read));
    assertEquals(String.join(" or ", is), words(derived, finding));
    List<String> said = derived.notCounted().stream().map(DoesNotCount::because).toList();
    because.forEach(b -> assertTrue(said.stream().anyMatch(s -> s.contains(b)), said::toString));
    assertEquals(because.size(), said.size(), said::toString);
    due.forEach(
        d ->
            assertTrue(
                derived.due().stream().anyMatch(s -> s.startsWith(d)), derived.due()::toString));
    assertEquals(due.size(), derived.due().size(), derived.due()::toString);
  }

  private static String words(Derived derived, String finding) {
    return derived.findings().entry(finding).map(e -> e.seen().words()).orElse("nothing known");
  }

  private static TubeRecord record(String yaml) {
    return Shipped.sound(
        new YamlReader()
            .read(
                SourceText.of("record.yaml", yaml),
                root -> RecordLoader.load(root, POLICY.vocabulary())));
  }

  private static String text(String name) {
    try (InputStream in = CountsTest.class.getResourceAsStream("/org/tidemark/count/" + name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
