package org.tidemark.policies;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.kie.dmn.api.core.DMNContext;
import org.kie.dmn.api.core.DMNDecisionResult;
import org.kie.dmn.api.core.DMNMessage;
import org.kie.dmn.api.core.DMNModel;
import org.kie.dmn.api.core.DMNResult;
import org.kie.dmn.api.core.DMNRuntime;
import org.kie.dmn.core.compiler.RuntimeTypeCheckOption;
import org.kie.dmn.core.internal.utils.DMNRuntimeBuilder;
import org.kie.dmn.validation.DMNValidator;
import org.kie.dmn.validation.DMNValidatorFactory;
import org.kie.internal.io.ResourceFactory;

/** KIE 10.2.0, an engine for decision tables that nobody here wrote. */
final class Kie {
  private final DMNRuntime runtime;
  private final DMNModel model;

  private Kie(DMNRuntime runtime) {
    this.runtime = runtime;
    this.model = runtime.getModels().get(0);
  }

  /**
   * What an exported question comes to.
   *
   * @param outcome proceed, hold or escalate; empty where the engine gave none
   * @param kind why
   * @param rules the rules that fire
   */
  record Said(Optional<String> outcome, Optional<String> kind, Set<String> rules) {}

  /** Reads a model; without type checks this engine takes a number out of range for none. */
  static Kie of(String xml, boolean typeChecks) {
    return new Kie(
        DMNRuntimeBuilder.fromDefaults()
            .setOption(new RuntimeTypeCheckOption(typeChecks))
            .buildConfiguration()
            .fromResources(
                List.of(ResourceFactory.newReaderResource(new StringReader(xml), "UTF-8")))
            .getOrElseThrow(e -> new IllegalStateException("KIE cannot read the export", e)));
  }

  /** What the engine has to say about a model: its schema, its names and types. */
  static List<String> validated(String xml) {
    return messages(
        xml, DMNValidator.Validation.VALIDATE_SCHEMA, DMNValidator.Validation.VALIDATE_MODEL);
  }

  /** What the engine's analysis of tables has to say. */
  static List<String> analysed(String xml) {
    return messages(xml, DMNValidator.Validation.ANALYZE_DECISION_TABLE);
  }

  private static List<String> messages(String xml, DMNValidator.Validation... what) {
    List<DMNMessage> messages =
        DMNValidatorFactory.newValidator().validate(new StringReader(xml), what);
    return messages.stream().map(m -> m.getMessageType() + ": " + m.getText()).toList();
  }

  List<String> faults() {
    return model.getMessages().stream().map(DMNMessage::getText).toList();
  }

  Said ask(String question, Map<String, Object> inputs) {
    DMNResult result = evaluate("Outcome_" + question, inputs);
    return new Said(
        text(result, "Outcome_" + question),
        text(result, "Kind_" + question),
        rules(result.getDecisionResultByName("Rules_" + question)));
  }

  /** What one decision of any model comes to. */
  Optional<String> decide(String decision, Map<String, Object> inputs) {
    return text(evaluate(decision, inputs), decision);
  }

  private DMNResult evaluate(String decision, Map<String, Object> inputs) {
    DMNContext context = runtime.newContext();
    inputs.forEach(context::set);
    return runtime.evaluateByName(model, context, decision);
  }

  private static Optional<String> text(DMNResult result, String decision) {
    return Optional.ofNullable((String) result.getDecisionResultByName(decision).getResult());
  }

  private static Set<String> rules(DMNDecisionResult result) {
    Set<String> names = new TreeSet<>();
    if (result.getResult() instanceof List<?> rows) {
      rows.forEach(row -> names.add((String) ((Map<?, ?>) row).get("rule")));
    }
    return names;
  }
}
