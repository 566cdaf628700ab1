package org.tidemark.policies;

import java.util.Locale;
import org.tidemark.testkit.TreeTable;

/**
 * A table of numbers as a DMN decision table with nothing else in it, as the analysis of KIE likes
 * it best.
 */
final class PlainDmn {
  private PlainDmn() {}

  static String xml(TreeTable table) {
    StringBuilder xml = new StringBuilder();
    xml.append("<definitions xmlns=\"https://www.omg.org/spec/DMN/20191111/MODEL/\" id=\"t\"");
    xml.append(
        " name=\"t\" namespace=\"urn:t\"><itemDefinition name=\"T\"><typeRef>number</typeRef>");
    xml.append("<allowedValues><text>[0..").append(TreeTable.VALUES - 1);
    xml.append("]</text></allowedValues></itemDefinition>");
    StringBuilder needs = new StringBuilder();
    StringBuilder inputs = new StringBuilder();
    for (int c = 0; c < table.columns(); c++) {
      xml.append(String.format(Locale.ROOT, "<inputData id=\"in_%1$d\" name=\"f%1$d\">", c));
      xml.append(
          String.format(Locale.ROOT, "<variable name=\"f%d\" typeRef=\"T\"/></inputData>", c));
      needs.append("<informationRequirement><requiredInput href=\"#in_").append(c);
      needs.append("\"/></informationRequirement>");
      inputs.append("<input><inputExpression typeRef=\"T\"><text>f").append(c);
      inputs.append("</text></inputExpression></input>");
    }
    xml.append(
        "<decision id=\"answer\" name=\"Answer\"><variable name=\"Answer\" typeRef=\"string\"/>");
    xml.append(needs)
        .append("<decisionTable hitPolicy=\"ANY\">")
        .append(inputs)
        .append("<output/>");
    table.rows().forEach(row -> row(row, xml));
    return xml.append("</decisionTable></decision></definitions>").toString();
  }

  private static void row(TreeTable.Row row, StringBuilder xml) {
    xml.append("<rule>");
    for (int c = 0; c < row.low().size(); c++) {
      xml.append("<inputEntry><text>[").append(row.low().get(c)).append("..");
      xml.append(row.high().get(c)).append("]</text></inputEntry>");
    }
    xml.append("<outputEntry><text>\"").append(row.effect().word());
    xml.append("\"</text></outputEntry></rule>");
  }
}
