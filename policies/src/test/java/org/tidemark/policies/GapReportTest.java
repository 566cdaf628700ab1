package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Band;
import org.tidemark.model.Bound;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Effect;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Limit;
import org.tidemark.model.Rule;
import org.tidemark.model.Seen;
import org.tidemark.model.Worse;
import org.tidemark.prove.Claim;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Prover;
import org.tidemark.prove.Verdict;
import org.tidemark.testkit.PlainPolicies;

/**
 * Small tables with a gap that KIE 10.2.0's own analysis does not report, though its own engine
 * finds no rule there: why that report is no oracle for us. The prover finds each gap. The tables
 * are ours, found by comparing the analysis with plain enumeration on random tables.
 */
class GapReportTest {
  private static final String NONE = "-";

  /**
   * Two rows of two columns; a row's cells are tests in DMN's expression language.
   *
   * @param columns in the order in which the miss shows: what comes first is a word or a flag
   * @param first the first row
   * @param second the second row
   * @param theirGap a case that neither row takes, as inputs
   * @param ourGap the same, as findings
   */
  private record Table(
      List<String> columns,
      List<String> first,
      List<String> second,
      Map<String, Object> theirGap,
      Map<String, Seen> ourGap) {}

  static Stream<Table> tables() {
    return Stream.of(
        new Table(
            List.of("letter", "flag"),
            List.of("\"a\", \"b\"", NONE),
            List.of(NONE, "true"),
            Map.of("letter", "c", "flag", false),
            Map.of("letter", Seen.option("c"), "flag", Seen.option("no"))),
        new Table(
            List.of("other-flag", "flag"),
            List.of("false", NONE),
            List.of(NONE, "false"),
            Map.of("other-flag", true, "flag", true),
            Map.of("other-flag", Seen.option("yes"), "flag", Seen.option("yes"))),
        new Table(
            List.of("letter", "number"),
            List.of("\"a\", \"b\"", NONE),
            List.of(NONE, "<= 5"),
            Map.of("letter", "c", "number", new BigDecimal("5.5")),
            Map.of("letter", Seen.option("c"), "number", Seen.number(new BigDecimal("6")))));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void theirAnalysisIsSilentThoughTheirEngineFindsNoRule(Table table) {
    String xml = xml(table);
    List<String> gaps =
        Kie.analysed(xml).stream().filter(m -> m.startsWith("DECISION_TABLE_GAP")).toList();
    assertEquals(List.of(), gaps, "were it reported, the analysis could be believed more");
    Kie kie = Kie.of(xml, true);
    Map<String, Object> gap =
        table.theirGap.entrySet().stream()
            .collect(Collectors.toMap(e -> e.getKey().replace('-', '_'), Map.Entry::getValue));
    assertEquals(Optional.empty(), kie.decide("Answer", gap));
  }

  /** The same table, as a policy: two rules that allow. */
  @ParameterizedTest
  @MethodSource("tables")
  void ourProverFindsTheGap(Table table) {
    Proof proof =
        new Prover()
            .prove(policy(table), Optional.empty()).stream()
                .filter(p -> p.claim().kind() == Claim.Kind.NO_GAP)
                .findFirst()
                .orElseThrow();
    Findings found = ((Verdict.Refuted) proof.verdict()).witness().findings();
    table.ourGap.forEach(
        (name, seen) -> assertEquals(seen, found.entry(name).orElseThrow().seen()));
  }

  private static String xml(Table table) {
    StringBuilder xml = new StringBuilder();
    xml.append("<definitions xmlns=\"https://www.omg.org/spec/DMN/20191111/MODEL/\" id=\"t\"");
    xml.append(" name=\"t\" namespace=\"urn:t\">");
    xml.append(
        type("letter", "string", "\"a\", \"b\", \"c\"") + type("number", "number", "[0..10]"));
    table.columns().forEach(c -> xml.append(input(c)));
    xml.append(
        "<decision id=\"answer\" name=\"Answer\"><variable name=\"Answer\" typeRef=\"string\"/>");
    table
        .columns()
        .forEach(
            c ->
                xml.append(
                    "<informationRequirement><requiredInput href=\"#in_"
                        + variable(c)
                        + "\"/></informationRequirement>"));
    xml.append("<decisionTable hitPolicy=\"ANY\">");
    for (String column : table.columns()) {
      xml.append("<input><inputExpression typeRef=\"" + typeOf(column) + "\"><text>");
      xml.append(variable(column) + "</text></inputExpression></input>");
    }
    xml.append("<output/>");
    for (List<String> row : List.of(table.first, table.second)) {
      xml.append("<rule>");
      row.forEach(
          cell ->
              xml.append(
                  "<inputEntry><text>" + cell.replace("<", "&lt;") + "</text></inputEntry>"));
      xml.append("<outputEntry><text>\"proceed\"</text></outputEntry></rule>");
    }
    return xml.append("</decisionTable></decision></definitions>").toString();
  }

  private static String variable(String column) {
    return column.replace('-', '_');
  }

  /** A flag is a plain boolean: this analysis takes a type derived from it for numbers. */
  private static String typeOf(String column) {
    return column.endsWith("flag") ? "boolean" : "T_" + column;
  }

  private static String type(String name, String base, String allowed) {
    return "<itemDefinition name=\"T_"
        + name
        + "\"><typeRef>"
        + base
        + "</typeRef><allowedValues><text>"
        + allowed
        + "</text></allowedValues></itemDefinition>";
  }

  private static String input(String column) {
    String name = variable(column);
    return "<inputData id=\"in_"
        + name
        + "\" name=\""
        + name
        + "\"><variable name=\""
        + name
        + "\" typeRef=\""
        + typeOf(column)
        + "\"/></inputData>";
  }

  private static EffectivePolicy policy(Table table) {
    List<Finding> findings = table.columns().stream().map(GapReportTest::finding).toList();
    List<Rule> rules =
        List.of(
            rule("first", condition(table.columns().get(0), table.first.get(0))),
            rule("second", condition(table.columns().get(1), table.second.get(1))));
    return PlainPolicies.policy(findings, rules);
  }

  private static Finding finding(String name) {
    Domain domain =
        switch (name) {
          case "letter" -> PlainPolicies.choice(List.of("a", "b", "c"));
          case "number" ->
              new Domain.Measure("mL", BigDecimal.ZERO, BigDecimal.TEN, BigDecimal.ONE, List.of());
          default -> PlainPolicies.choice(List.of("no", "yes"));
        };
    return PlainPolicies.finding(name, 1, domain, new Worse.Neither(), List.of());
  }

  private static Condition condition(String column, String cell) {
    return switch (cell) {
      case "true" -> new Condition.Options(column, Set.of("yes"));
      case "false" -> new Condition.Options(column, Set.of("no"));
      case "<= 5" -> new Condition.InBand(column, atMost(5));
      default -> new Condition.Options(column, Set.of("a", "b"));
    };
  }

  private static Band atMost(int number) {
    Limit limit = new Limit.Fixed(BigDecimal.valueOf(number));
    return new Band(Optional.empty(), Optional.of(new Bound(limit, true)));
  }

  private static Rule rule(String name, Condition given) {
    return PlainPolicies.rule(name, Effect.ALLOW, List.of(given), Set.of());
  }
}
