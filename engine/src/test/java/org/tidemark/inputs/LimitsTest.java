package org.tidemark.inputs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlReader;

/**
 * Each limit of the documentation holds exactly: what is at it is read, one more is not. Policies
 * that are made to take long end in an error; a quiet machine needs a second for the slowest, and
 * what is held here is five seconds of this thread's own work.
 */
final class LimitsTest {
  private static final Duration MOST = Duration.ofSeconds(5);
  private static final Duration HANGS = Duration.ofMinutes(1);
  private static final String GOOD = Bench.resource("base/alone.yaml");

  private static List<Diagnostic> said(String text) {
    return Bench.read("alone", SourceText.of("policy.yaml", text)).diagnostics();
  }

  private static List<String> tooLarge(String text) {
    return said(text).stream()
        .filter(d -> d.code() == DiagnosticCode.TOO_LARGE)
        .map(Diagnostic::message)
        .toList();
  }

  private static List<String> yaml(String text) {
    return new YamlReader()
        .read(SourceText.of("a.yaml", text)).diagnostics().stream()
            .map(Diagnostic::message)
            .toList();
  }

  private static String times(int times, IntFunction<String> line) {
    return IntStream.range(0, times).mapToObj(line).collect(Collectors.joining());
  }

  private static String with(String after, String more) {
    assertTrue(GOOD.contains(after), after);
    return GOOD.replaceFirst("(?m)^" + after + "\n", after + "\n" + more.replace("$", "\\$"));
  }

  @Test
  void characters() {
    assertEquals(List.of(), yaml("#" + "a".repeat(399_994) + "\na: b"));
    assertEquals(
        List.of("the text has more than 400000 characters"),
        yaml("#" + "a".repeat(399_995) + "\na: b"));
  }

  @Test
  void depth() {
    assertEquals(List.of(), yaml("[".repeat(20) + "a" + "]".repeat(20)));
    assertEquals(
        List.of("this lies deeper than 20 levels"), yaml("[".repeat(21) + "a" + "]".repeat(21)));
  }

  @Test
  void parts() {
    assertEquals(List.of(), yaml("- a\n".repeat(39_999)));
    assertEquals(List.of("the file has more than 40000 parts"), yaml("- a\n".repeat(40_000)));
  }

  @Test
  void lengthOfAText() {
    assertEquals(List.of(), tooLarge(GOOD.replace("Example Hospital", "x".repeat(2_000))));
    assertEquals(
        List.of("this text has 2001 characters, and 2000 are the most"),
        tooLarge(GOOD.replace("Example Hospital", "x".repeat(2_001))));
  }

  @Test
  void lengthOfAName() {
    String line = "  %s: {is: 1, unit: pH}\n";
    assertEquals(List.of(), tooLarge(with("values:", line.formatted("v".repeat(80)))));
    assertEquals(
        List.of("this name has 81 characters, and 80 are the most"),
        tooLarge(with("values:", line.formatted("v".repeat(81)))));
    assertEquals(
        List.of("this name has 81 characters, and 80 are the most"),
        tooLarge(GOOD + "k".repeat(81) + ": 1\n"));
    assertEquals(List.of(), tooLarge(GOOD.replace("trouble", "t".repeat(80))));
    assertEquals(
        List.of("`" + "t".repeat(60) + "...` is too long to name a rule"),
        tooLarge(GOOD.replace("trouble", "t".repeat(81))));
  }

  private static String numbers(int times) {
    return GOOD
        + "numbers-that-are-no-limits: [7 mL syringe]\nnot-stated:\n"
        + times(times / 100, i -> "  - " + i + ": " + "7 mL syringe ".repeat(100) + "\n")
            .replace(": ", " of ");
  }

  @Test
  void numbersInTexts() {
    assertEquals(List.of(), tooLarge(numbers(2_000)));
    assertEquals(
        List.of("the texts hold more than 2000 numbers with a unit"), tooLarge(numbers(2_100)));
  }

  private static String measure(String highest, String step) {
    return GOOD.replace(
        "questions:\n",
        "own-findings:\n  amount: {asks: How much, kind: measure, unit: mL, range: [0, "
            + highest
            + "], step: "
            + step
            + ", worse: higher, ask: 99}\nquestions:\n");
  }

  @Test
  void readingsOfAMeasure() {
    assertEquals(List.of(), tooLarge(measure("1999.9", "0.1")));
    assertEquals(
        List.of("this measure tells 20001 readings apart, and 20000 are the most"),
        tooLarge(measure("2000", "0.1")));
    assertEquals(
        List.of("this measure tells 999999999000001 readings apart, and 20000 are the most"),
        tooLarge(measure("999999999", "0.000001")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "values|v%d: {is: 1, unit: pH}",
        "bands|b%d: {of: ph, at-most: 1}",
        "contacts|c%d: {who: Somebody, when: Always}",
      })
  void namedThings(String part, String line) {
    int there = part.equals("bands") ? 2 : 1;
    String text = with(part + ":", times(500 - there, i -> "  " + line.formatted(i) + "\n"));
    assertEquals(List.of(), tooLarge(text));
    String more = with(part + ":", times(501 - there, i -> "  " + line.formatted(i) + "\n"));
    assertEquals(List.of("`" + part + "` holds 501, and 500 are the most"), tooLarge(more));
  }

  private static String rules(int count, String given, String tube) {
    return times(
        count,
        i ->
            "      - rule: r"
                + tube
                + i
                + "\n        effect: hold\n        about: signs\n"
                + "        given: "
                + given
                + "\n        next: [Stop.]\n        tube: "
                + tube
                + "\n");
  }

  @Test
  void rules() {
    String given = "{breathing: new}";
    assertEquals(List.of(), tooLarge(with("    rules:", rules(997, given, "leave-in"))));
    assertEquals(
        List.of("`rules` holds 1001, and 1000 are the most"),
        tooLarge(with("    rules:", rules(998, given, "leave-in"))));
  }

  /** A condition of so many ways: one of so many readings, for each of ten lengths or of one. */
  private static String ways(int readings, int lengths) {
    String ph = times(readings, i -> (i == 0 ? "" : ", ") + "{ph: " + i % 14 + "}");
    return "{of-" + lengths + ": \"yes\", any-of: [" + ph + "]}";
  }

  private static String term(int lengths) {
    String out = times(lengths, i -> (i == 0 ? "" : ", ") + "{outside-length: " + i + "}");
    return "  of-" + lengths + ": {any-of: [" + out + "]}\n";
  }

  private static String withRules(String rules) {
    return with("    rules:", rules)
        .replaceFirst("(?m)^questions:\n", "terms:\n" + term(1) + term(10) + "questions:\n");
  }

  private static List<String> waysSaid(String text) {
    return said(text).stream()
        .filter(d -> d.code() == DiagnosticCode.TOO_MANY_WAYS)
        .map(Diagnostic::message)
        .toList();
  }

  @Test
  void waysOfOneCondition() {
    assertEquals(List.of(), waysSaid(withRules(rules(1, ways(100, 10), "leave-in"))));
    assertEquals(
        List.of("the rule `rleave-in0` can hold in 1010 ways, and 1000 are the most"),
        waysSaid(withRules(rules(1, ways(101, 10), "leave-in"))));
  }

  /** The three rules that are there already have one way each. */
  @Test
  void waysInAll() {
    String many = rules(4, ways(100, 10), "leave-in");
    assertEquals(
        List.of(),
        waysSaid(withRules(many + rules(1, ways(997, 1), "leave-in").replace("rl", "l"))));
    assertEquals(
        List.of("all conditions together can hold in 5001 ways, and 5000 are the most"),
        waysSaid(withRules(many + rules(1, ways(998, 1), "leave-in").replace("rl", "l"))));
  }

  @Test
  void pairsOfTubeOrders() {
    String rules = rules(1, ways(10, 10), "leave-in") + rules(1, ways(100, 10), "take-out");
    assertEquals(List.of(), waysSaid(withRules(rules)));
    String one = rules(1, "{ph: 1}", "take-out").replace("rt", "t");
    assertEquals(
        List.of(
            "the rules of `use` that order the tube out and in can meet in 100100 ways, and 100000"
                + " are the most"),
        waysSaid(withRules(rules + one)));
  }

  private static void endsInTime(String text) {
    assertTimeoutPreemptively(
        HANGS,
        () -> {
          long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
          List<Diagnostic> said = said(text);
          said.forEach(Diagnostic::render);
          long after = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
          Duration worked = Duration.ofNanos(after - before);
          assertTrue(worked.compareTo(MOST) < 0, () -> "it took " + worked);
          assertTrue(said.stream().noneMatch(d -> d.code() == DiagnosticCode.SYNTAX));
        });
  }

  /** Rules that allow, each over seven measures of as many readings as a measure may have. */
  private static String withAmounts(int rules) {
    String measures =
        times(
            7,
            i ->
                "  m"
                    + i
                    + ": {asks: How much, kind: measure, unit: mL, range: [0, 19999], step: 1,"
                    + " worse: higher, ask: "
                    + (90 + i)
                    + "}\n");
    String allow =
        times(
            rules,
            i ->
                "      - {rule: a"
                    + i
                    + ", effect: allow, about: signs, given: {"
                    + times(7, k -> (k == 0 ? "m" : ", m") + k + ": {at-most: " + (i + k) + "}")
                    + "}}\n");
    return with("    rules:", allow)
        .replace("questions:\n", "own-findings:\n" + measures + "questions:\n");
  }

  @Test
  void everythingAtItsLimitAtOnceStillEnds() {
    endsInTime(
        withRules(
            rules(4, ways(100, 10), "leave-in")
                + rules(500, "{breathing: new}", "leave-in").replace("rl", "l")));
    endsInTime(withRules(rules(1, ways(10, 10), "leave-in") + rules(1, ways(100, 10), "take-out")));
    endsInTime(
        with(
            "contacts:",
            times(
                499,
                i -> "  c" + i + ": {who: Nurse, when: By day, else: c" + (i + 1) % 499 + "}\n")));
    endsInTime(
        GOOD + "not-stated:\n" + times(190, i -> "  - \"" + i + "5".repeat(1_990) + "x\"\n"));
    endsInTime(
        with(
            "values:",
            times(190, i -> "  a" + i + ": {is: " + "a".repeat(1_900) + ", unit: mL}\n")));
    endsInTime(
        with(
            "values:",
            times(
                190, i -> "  " + "a".repeat(990) + i + ": {is: {" + "b".repeat(990) + i + "}}\n")));
    endsInTime(withAmounts(950));
    endsInTime(
        GOOD
            + "numbers-that-are-no-limits:\n"
            + times(500, i -> "  - " + i + " mL syringe\n")
            + "not-stated:\n"
            + times(500, i -> "  - \"" + (i + " mL syringe. Use litmus. ").repeat(70) + "\"\n"));
    endsInTime(
        with(
            "    rules:",
            rules(900, "{breathing: new}", "leave-in")
                .replace("[Stop.]", "[\"" + "stethoscope ".repeat(20) + "\"]")));
  }
}
