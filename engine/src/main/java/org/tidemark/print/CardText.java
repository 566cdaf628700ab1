package org.tidemark.print;

import java.util.List;
import java.util.Optional;
import org.tidemark.load.Fields;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/**
 * The wording of a checklist as it is kept in a file: sentences that may name the policy's values.
 *
 * @param name its name
 * @param title what the card is called
 * @param mode how it is worked through
 * @param pauses its parts
 * @param never lines of what never counts
 */
record CardText(
    String name, Located<String> title, CardMode mode, List<Part> pauses, List<Line> never) {

  /**
   * A part of the card.
   *
   * @param heading its name
   * @param items its items
   * @param stop the bar after it
   */
  record Part(Located<String> heading, List<Line> items, Optional<Bar> stop) {}

  /**
   * One sentence, or each of a list of the policy's sentences.
   *
   * @param says the sentence, or the list's name
   * @param each whether it is a list's name
   * @param write what to write down
   * @param unit the unit of what is written
   * @param sources where it is published; common practice when it says so
   */
  record Line(
      Located<String> says,
      boolean each,
      Optional<String> write,
      Optional<String> unit,
      List<Located<String>> sources) {}

  /**
   * A stop bar.
   *
   * @param goOnIf what must be true
   * @param otherwise what to do if not
   * @param call whom to call
   */
  record Bar(List<Line> goOnIf, List<Line> otherwise, List<Line> call) {}

  static Loaded<CardText> read(SourceText source) {
    return new YamlReader().read(source).match(CardText::read, Loaded::broken);
  }

  private static Loaded<CardText> read(YamlNode node) {
    Problems problems = new Problems();
    Fields fields = Fields.of(node, "the card", problems);
    CardText card =
        new CardText(
            fields.text("card").value(),
            fields.text("title"),
            fields.requiredWord("mode", CardMode.class).orElse(CardMode.READ_THEN_DO),
            fields.list("pauses", part -> part(Fields.of(part, "the pause", problems))),
            lines(fields, "never"));
    fields.done();
    return problems.conclude(() -> card);
  }

  private static Part part(Fields fields) {
    Part part =
        new Part(
            fields.text("pause"),
            lines(fields, "items"),
            fields
                .optional("stop")
                .map(stop -> bar(Fields.of(stop, "the stop", fields.problems()))));
    fields.done();
    return part;
  }

  private static Bar bar(Fields fields) {
    Bar bar = new Bar(lines(fields, "go-on-if"), lines(fields, "otherwise"), lines(fields, "call"));
    fields.done();
    return bar;
  }

  private static List<Line> lines(Fields fields, String key) {
    return fields.list(key, node -> line(Fields.of(node, "the line", fields.problems())));
  }

  private static Line line(Fields fields) {
    boolean each = fields.has("each");
    Line line =
        new Line(
            fields.text(each ? "each" : "do"),
            each,
            fields.optionalText("write").map(Located::value),
            fields.optionalText("unit").map(Located::value),
            fields.texts("source"));
    if (!each && line.sources().isEmpty()) {
      fields
          .problems()
          .add(
              Diagnostic.error(
                      DiagnosticCode.MISSING_KEY, fields.span(), "the line does not say its source")
                  .help("add `source: [...]`, or `source: common practice` when there is none"));
    }
    fields.done();
    return line;
  }
}
