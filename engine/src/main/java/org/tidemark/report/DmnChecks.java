package org.tidemark.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;

/**
 * The guard in front of a table: an expression that is true only when every input is there, is one
 * of its values, lies on a step, and fits those that it hangs on. Without it a missing input would
 * pass every dash of a table, and so take a rule that holds for one that does not.
 */
final class DmnChecks {
  private final Map<String, DmnInput> inputs = new LinkedHashMap<>();

  DmnChecks(List<DmnInput> inputs) {
    inputs.forEach(i -> this.inputs.put(i.finding().name(), i));
  }

  /** What is neither true nor false counts as false. */
  String expression() {
    List<String> all = new ArrayList<>();
    inputs.values().forEach(i -> all.addAll(checks(i)));
    return "every Check in [\n" + String.join(",\n", all) + "\n] satisfies Check = true";
  }

  private List<String> checks(DmnInput input) {
    List<String> checks = new ArrayList<>();
    if (input.hasWord()) {
      checks.add(isOneOf(input, input.words()));
    }
    if (input.finding().domain() instanceof Domain.Measure measure) {
      checks.add(input.hasWord() ? numberOrNone(input, measure) : number(input, measure));
    }
    if (!input.finding().applies().isEmpty()) {
      checks.add(existsWhenItMay(input));
    }
    return checks;
  }

  private static String isOneOf(DmnInput input, Collection<String> words) {
    return "list contains([" + DmnNames.quoted(words) + "], " + input.word().variable() + ")";
  }

  private static String is(DmnInput input, String word) {
    return input.word().variable() + " = " + DmnNames.quoted(word);
  }

  private static String numberOrNone(DmnInput input, Domain.Measure measure) {
    return "if "
        + is(input, input.measured())
        + " then "
        + number(input, measure)
        + " else "
        + input.number().variable()
        + " = null";
  }

  /** In range and on a step. */
  private static String number(DmnInput input, Domain.Measure measure) {
    String n = input.number().variable();
    String steps = n + " / " + measure.step().toPlainString();
    return "(if "
        + (n + " = null then false else ")
        + (n + " >= " + measure.lowest().toPlainString() + " and ")
        + (n + " <= " + measure.highest().toPlainString() + " and ")
        + (steps + " = floor(" + steps + "))");
  }

  private String existsWhenItMay(DmnInput input) {
    Finding finding = input.finding();
    String parents =
        finding.applies().stream().map(this::parent).collect(Collectors.joining(" and ", "(", ")"));
    return finding
        .whenClosed()
        .map(closed -> parents + " or " + is(input, closed))
        .orElseGet(() -> parents + " != (" + is(input, input.doesNotApply()) + ")");
  }

  private String parent(Condition.Options parent) {
    DmnInput input = inputs.get(parent.finding());
    if (input == null) {
      throw new IllegalStateException("no input for " + parent.finding());
    }
    return isOneOf(input, parent.options());
  }
}
