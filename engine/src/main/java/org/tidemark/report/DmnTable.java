package org.tidemark.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Effect;
import org.tidemark.model.Rule;

/** All rules of a question as one table, which collects those that fire with what they do. */
final class DmnTable {
  private static final List<String> OUTPUTS = List.of("effect", "rule", "takes_force_from");
  private static final List<String> NOTES = List.of("layer", "because", "sources");

  private final EffectivePolicy policy;
  private final List<DmnRow> rows = new ArrayList<>();
  private final List<String> cannotFire = new ArrayList<>();
  private final List<DmnInput.Column> columns;

  DmnTable(EffectivePolicy policy, List<Rule> rules, List<DmnInput> inputs) {
    this.policy = policy;
    rules.forEach(this::add);
    this.columns =
        inputs.stream()
            .flatMap(i -> i.columns().stream())
            .filter(c -> rows.stream().anyMatch(r -> r.tests().containsKey(c)))
            .toList();
  }

  private void add(Rule rule) {
    List<DmnRow> ways = DmnRow.of(policy, rule);
    rows.addAll(ways);
    if (ways.isEmpty()) {
      cannotFire.add(rule.name());
    }
  }

  /** What the table looks at. */
  List<String> variables() {
    return columns.stream().map(DmnInput.Column::variable).toList();
  }

  String says() {
    String says =
        "The rules that fire, with what each does. The order of rows never matters. A rule that"
            + " holds in several ways has a row for each.";
    return cannotFire.isEmpty()
        ? says
        : says
            + " Without a row, since it can hold in no case: "
            + String.join(", ", cannotFire)
            + ".";
  }

  void write(Xml xml) throws XMLStreamException {
    if (columns.isEmpty()) {
      xml.cell("literalExpression", list());
      return;
    }
    xml.element("decisionTable", this::table, "hitPolicy", "COLLECT");
  }

  /** A table without columns is none: its rules always hold, or there are none. */
  private String list() {
    return rows.stream()
        .flatMap(r -> outputs(r.rule()).stream())
        .map(DmnTable::context)
        .collect(Collectors.joining(", ", "[", "]"));
  }

  private static String context(List<String> outputs) {
    List<String> entries = new ArrayList<>();
    for (int i = 0; i < outputs.size(); i++) {
      entries.add(OUTPUTS.get(i) + ": " + outputs.get(i));
    }
    return "{" + String.join(", ", entries) + "}";
  }

  private void table(Xml xml) throws XMLStreamException {
    for (DmnInput.Column column : columns) {
      xml.element(
          "input",
          input -> input.cell("inputExpression", column.variable(), "typeRef", column.type()));
    }
    for (String output : OUTPUTS) {
      xml.empty("output", "name", output, "typeRef", "string");
    }
    for (String note : NOTES) {
      xml.empty("annotation", "name", note);
    }
    for (DmnRow row : rows) {
      for (List<String> outputs : outputs(row.rule())) {
        xml.element("rule", rule -> row(rule, row, outputs));
      }
    }
  }

  private void row(Xml xml, DmnRow row, List<String> outputs) throws XMLStreamException {
    for (DmnInput.Column column : columns) {
      xml.cell("inputEntry", row.test(column));
    }
    for (String output : outputs) {
      xml.cell("outputEntry", output);
    }
    for (String note : notes(row.rule())) {
      xml.cell("annotationEntry", note);
    }
  }

  /** What a rule gives; one that takes the force from several rules gives each on its own. */
  private static List<List<String>> outputs(Rule rule) {
    String effect = DmnNames.quoted(rule.effect().word());
    String name = DmnNames.quoted(rule.name());
    return rule.effect() == Effect.SET_ASIDE
        ? rule.which().stream().map(w -> List.of(effect, name, DmnNames.quoted(w))).toList()
        : List.of(List.of(effect, name, "null"));
  }

  private List<String> notes(Rule rule) {
    return List.of(
        rule.layer(),
        rule.says().because().map(policy::fill).orElse(""),
        String.join(", ", rule.backing().sources()));
  }
}
