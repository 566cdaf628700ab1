package org.tidemark.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Option;

/**
 * A finding as inputs of a table: a choice is a word; a measure is a number, and beside it a word
 * where something else may stand in the number's place.
 *
 * @param finding the finding
 */
record DmnInput(Finding finding) {
  private static final String DOES_NOT_APPLY = "does-not-apply";
  private static final String MEASURED = "measured";

  /** A column of a table: a variable and its type. */
  record Column(String variable, String type) {
    static Column of(String variable) {
      return new Column(variable, DmnNames.type(variable));
    }
  }

  boolean isMeasure() {
    return finding.domain() instanceof Domain.Measure;
  }

  /** Whether there is a word to enter: always for a choice. */
  boolean hasWord() {
    return !isMeasure() || !finding.domain().options().isEmpty() || !finding.applies().isEmpty();
  }

  Column number() {
    return Column.of(DmnNames.variable(finding.name()));
  }

  Column word() {
    return isMeasure() ? Column.of(DmnNames.found(finding.name())) : number();
  }

  /** The columns, the word first. */
  List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    if (hasWord()) {
      columns.add(word());
    }
    if (isMeasure()) {
      columns.add(number());
    }
    return columns;
  }

  /** All words that may be entered. */
  List<String> words() {
    List<String> words = new ArrayList<>();
    if (isMeasure()) {
      words.add(measured());
    }
    finding.domain().options().forEach(o -> words.add(o.name()));
    if (mayNotApply()) {
      words.add(doesNotApply());
    }
    return words;
  }

  boolean mayNotApply() {
    return !finding.applies().isEmpty() && finding.whenClosed().isEmpty();
  }

  String measured() {
    return free(MEASURED);
  }

  String doesNotApply() {
    return free(DOES_NOT_APPLY);
  }

  /** A word of the table's own never means the same as an option that happens to bear its name. */
  private String free(String word) {
    String free = word;
    while (finding.domain().option(free).isPresent()) {
      free = free + "*";
    }
    return free;
  }

  void types(Xml xml) throws XMLStreamException {
    if (hasWord()) {
      type(xml, word(), "string", DmnNames.quoted(words()));
    }
    if (finding.domain() instanceof Domain.Measure measure) {
      String range = DmnInterval.all(measure).toString();
      type(xml, number(), "number", hasWord() ? "null, " + range : range);
    }
  }

  private static void type(Xml xml, Column column, String base, String allowed)
      throws XMLStreamException {
    xml.element(
        "itemDefinition",
        item -> {
          item.text("typeRef", base);
          item.cell("allowedValues", allowed);
        },
        "name",
        column.type());
  }

  void data(Xml xml) throws XMLStreamException {
    for (Column column : columns()) {
      xml.element(
          "inputData",
          data -> {
            data.text("description", says(column));
            data.empty("variable", "name", column.variable(), "typeRef", column.type());
          },
          "id",
          "input_" + column.variable(),
          "name",
          column.variable());
    }
  }

  private String says(Column column) {
    if (finding.domain() instanceof Domain.Measure measure && column.equals(number())) {
      String unit = measure.unit().isEmpty() ? "" : " in " + measure.unit();
      String range = measure.print(measure.lowest()) + " to " + measure.print(measure.highest());
      String step = ", in steps of " + measure.step().toPlainString();
      String none = hasWord() ? "; null unless " + word().variable() + " is " + measured() : "";
      return finding.asks() + " A number" + unit + ", " + range + step + none + ".";
    }
    return finding.asks() + " " + labels();
  }

  private String labels() {
    List<String> labels = new ArrayList<>();
    if (isMeasure()) {
      labels.add(measured() + ": A number was read");
    }
    for (Option option : finding.domain().options()) {
      labels.add(option.name() + ": " + option.label());
    }
    if (mayNotApply()) {
      labels.add(doesNotApply() + ": There is nothing to ask");
    }
    return labels.stream().collect(Collectors.joining("; ", "", "."));
  }
}
