package org.tidemark.report;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamException;

/** One decision of a graph: its name, its type, what it says and what it needs. */
final class DmnDecision {
  private final String name;
  private final String type;
  private final String description;
  private final List<String> decisions = new ArrayList<>();
  private final List<String> inputs = new ArrayList<>();
  private String asks = "";

  DmnDecision(String name, String type, String description) {
    this.name = name;
    this.type = type;
    this.description = description;
  }

  DmnDecision asks(String question) {
    asks = question;
    return this;
  }

  DmnDecision needs(String... names) {
    decisions.addAll(List.of(names));
    return this;
  }

  DmnDecision looksAt(List<String> variables) {
    inputs.addAll(variables);
    return this;
  }

  void write(Xml xml, Xml.Writing expression) throws XMLStreamException {
    xml.element(
        "decision",
        decision -> {
          decision.text("description", description);
          if (!asks.isEmpty()) {
            decision.text("question", asks);
          }
          decision.empty("variable", "name", name, "typeRef", type);
          for (String input : inputs) {
            requirement(decision, "requiredInput", "#input_" + input);
          }
          for (String needed : decisions) {
            requirement(decision, "requiredDecision", "#decision_" + needed);
          }
          expression.to(decision);
        },
        "id",
        "decision_" + name,
        "name",
        name);
  }

  void literal(Xml xml, String expression) throws XMLStreamException {
    write(xml, e -> e.cell("literalExpression", expression));
  }

  private static void requirement(Xml xml, String kind, String href) throws XMLStreamException {
    xml.element("informationRequirement", r -> r.empty(kind, "href", href));
  }

  /** A table of which one row fits; the last entry of a row is what it gives. */
  void unique(Xml xml, List<DmnInput.Column> columns, List<List<String>> rows)
      throws XMLStreamException {
    write(
        xml, e -> e.element("decisionTable", t -> table(t, columns, rows), "hitPolicy", "UNIQUE"));
  }

  private static void table(Xml xml, List<DmnInput.Column> columns, List<List<String>> rows)
      throws XMLStreamException {
    for (DmnInput.Column column : columns) {
      xml.element(
          "input",
          input -> input.cell("inputExpression", column.variable(), "typeRef", column.type()));
    }
    xml.empty("output");
    for (List<String> row : rows) {
      xml.element("rule", rule -> row(rule, row));
    }
  }

  private static void row(Xml xml, List<String> row) throws XMLStreamException {
    for (int i = 0; i < row.size(); i++) {
      String cell = row.get(i);
      String entry = i < row.size() - 1 ? "inputEntry" : "outputEntry";
      xml.cell(entry, cell);
    }
  }
}
