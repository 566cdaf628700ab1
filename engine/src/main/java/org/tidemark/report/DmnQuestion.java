package org.tidemark.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.stream.XMLStreamException;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.decide.CompiledRule;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Effect;

/**
 * One question as a small graph of decisions: a table that collects the rules which fire, a guard
 * that says whether all was entered, and from these what is set aside, what then allows, the kind
 * of the answer, and the outcome.
 */
final class DmnQuestion {
  private final EffectiveQuestion question;
  private final List<DmnInput> inputs;
  private final DmnTable table;

  DmnQuestion(EffectivePolicy policy, EffectiveQuestion question) {
    CompiledQuestion compiled = CompiledQuestion.of(policy, question);
    this.question = question;
    this.inputs =
        IntStream.range(0, compiled.space().size())
            .mapToObj(i -> new DmnInput(compiled.space().cells(i).finding()))
            .toList();
    this.table =
        new DmnTable(policy, compiled.rules().stream().map(CompiledRule::rule).toList(), inputs);
  }

  List<DmnInput> inputs() {
    return inputs;
  }

  private String name(String what) {
    return DmnNames.decision(what, question.name());
  }

  void write(Xml xml) throws XMLStreamException {
    outcome(xml);
    kind(xml);
    force(xml);
    setAside(xml);
    new DmnDecision(name("Rules"), "Rules", table.says())
        .looksAt(table.variables())
        .write(xml, table::write);
    entered(xml);
  }

  private void outcome(Xml xml) throws XMLStreamException {
    List<List<String>> rows =
        List.of(
            List.of("\"escalates\"", "\"escalate\""),
            List.of("\"proceeds\"", "\"proceed\""),
            List.of("\"held\", \"unsettled\", \"not-yet\", \"not-covered\"", "\"hold\""));
    new DmnDecision(
            name("Outcome"),
            "Outcome",
            "The answer. Whatever is not proceed, nothing too, means: do not.")
        .asks(question.asks())
        .needs(name("Kind"))
        .unique(xml, List.of(new DmnInput.Column(name("Kind"), "Kind")), rows);
  }

  /**
   * The order of caution: what calls for help does so whatever else is missing, and only what is
   * fully known can proceed. A proceeding row names what it lets through in every column, so that
   * an error, which is null, proceeds nowhere.
   */
  private void kind(Xml xml) throws XMLStreamException {
    List<List<String>> rows =
        List.of(
            List.of("true", "-", "-", "-", "-", "\"escalates\""),
            List.of("false", "false", "-", "-", "-", "\"unsettled\""),
            List.of("false", "true", "true", "-", "-", "\"held\""),
            List.of("false", "true", "false", "true", "true, false", "\"proceeds\""),
            List.of("false", "true", "false", "false", "true", "\"not-yet\""),
            List.of("false", "true", "false", "false", "false", "\"not-covered\""));
    new DmnDecision(
            name("Kind"),
            "Kind",
            "Why the answer is what it is. Unsettled: something was not entered, or it cannot be as"
                + " it was entered.")
        .needs(name("Rules"), name("Entered"), name("Force"), name("SetAside"))
        .unique(
            xml,
            List.of(
                flag(count(with(Effect.ESCALATE))),
                flag(name("Entered")),
                flag(count(with(Effect.HOLD))),
                flag(count(name("Force"))),
                flag(count(with(Effect.NOT_YET)) + " or " + count(name("SetAside")))),
            rows);
  }

  private static DmnInput.Column flag(String expression) {
    return new DmnInput.Column(expression, "boolean");
  }

  private static String count(String list) {
    return "count(" + list + ") > 0";
  }

  private String with(Effect effect) {
    return name("Rules") + "[item.effect = " + DmnNames.quoted(effect.word()) + "]";
  }

  private void force(Xml xml) throws XMLStreamException {
    String allows = "item.effect = " + DmnNames.quoted(Effect.ALLOW.word());
    String stands = "not(list contains(" + name("SetAside") + ", item.rule))";
    new DmnDecision(
            name("Force"), "Names", "The rules that allow and that nothing takes the force from.")
        .needs(name("Rules"), name("SetAside"))
        .literal(xml, name("Rules") + "[" + allows + " and " + stands + "].rule");
  }

  private void setAside(Xml xml) throws XMLStreamException {
    new DmnDecision(
            name("SetAside"),
            "Names",
            "The rules that allow and that something takes the force from.")
        .needs(name("Rules"))
        .literal(xml, with(Effect.SET_ASIDE) + ".takes_force_from");
  }

  private void entered(Xml xml) throws XMLStreamException {
    List<String> all = new ArrayList<>();
    inputs.forEach(i -> i.columns().forEach(c -> all.add(c.variable())));
    new DmnDecision(
            name("Entered"),
            "boolean",
            "Whether everything was entered, within its range and on its step, and fits together.")
        .looksAt(Collections.unmodifiableList(all))
        .literal(xml, new DmnChecks(inputs).expression());
  }
}
