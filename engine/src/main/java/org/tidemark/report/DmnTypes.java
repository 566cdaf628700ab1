package org.tidemark.report;

import javax.xml.stream.XMLStreamException;

/** The types of what the decisions give. */
final class DmnTypes {
  private DmnTypes() {}

  static void write(Xml xml) throws XMLStreamException {
    words(xml, "Outcome", "\"proceed\", \"hold\", \"escalate\"");
    words(
        xml,
        "Kind",
        "\"escalates\", \"unsettled\", \"held\", \"proceeds\", \"not-yet\", \"not-covered\"");
    xml.element(
        "itemDefinition",
        names -> names.text("typeRef", "string"),
        "name",
        "Names",
        "isCollection",
        "true");
    xml.element(
        "itemDefinition",
        rules -> {
          component(rules, "effect");
          component(rules, "rule");
          component(rules, "takes_force_from");
        },
        "name",
        "Rules",
        "isCollection",
        "true");
  }

  private static void words(Xml xml, String name, String allowed) throws XMLStreamException {
    xml.element(
        "itemDefinition",
        item -> {
          item.text("typeRef", "string");
          item.cell("allowedValues", allowed);
        },
        "name",
        name);
  }

  private static void component(Xml xml, String name) throws XMLStreamException {
    xml.element("itemComponent", c -> c.text("typeRef", "string"), "name", name);
  }
}
