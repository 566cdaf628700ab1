package org.tidemark.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.layer.Alternatives;
import org.tidemark.layer.Atom;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Finding;
import org.tidemark.model.Rule;

/**
 * One row of a table: one way in which a rule holds.
 *
 * @param rule the rule
 * @param tests of each column that the row looks at, what it lets through
 */
record DmnRow(Rule rule, Map<DmnInput.Column, String> tests) {

  /** Every way in which a rule holds; none if it never can. */
  static List<DmnRow> of(EffectivePolicy policy, Rule rule) {
    List<DmnRow> rows = new ArrayList<>();
    Alternatives.of(policy, rule.given()).forEach(a -> rows.addAll(rows(policy, rule, a)));
    return rows;
  }

  private static List<DmnRow> rows(EffectivePolicy policy, Rule rule, List<Atom> atoms) {
    Map<Finding, DmnValues> values = new LinkedHashMap<>();
    for (Atom atom : atoms) {
      Finding finding = policy.vocabulary().require(atom.finding());
      values.merge(finding, DmnValues.of(finding, atom), DmnValues::and);
    }
    List<DmnRow> rows = List.of(new DmnRow(rule, Map.of()));
    for (Map.Entry<Finding, DmnValues> each : values.entrySet()) {
      rows = each(rows, new DmnInput(each.getKey()), each.getValue());
    }
    return rows;
  }

  /** A row can ask for a word or for a number; whoever wants either gets a row for each. */
  private static List<DmnRow> each(List<DmnRow> rows, DmnInput input, DmnValues values) {
    List<DmnRow> longer = new ArrayList<>();
    for (DmnRow row : rows) {
      if (!values.words().isEmpty()) {
        longer.add(row.and(Map.of(input.word(), values.wordTest())));
      }
      if (!values.numbers().isEmpty()) {
        longer.add(row.and(number(input, values)));
      }
    }
    return longer;
  }

  private static Map<DmnInput.Column, String> number(DmnInput input, DmnValues values) {
    Map<DmnInput.Column, String> tests = new LinkedHashMap<>();
    if (input.hasWord()) {
      tests.put(input.word(), DmnNames.quoted(input.measured()));
    }
    tests.put(input.number(), values.numberTest());
    return tests;
  }

  private DmnRow and(Map<DmnInput.Column, String> more) {
    Map<DmnInput.Column, String> both = new LinkedHashMap<>(tests);
    both.putAll(more);
    return new DmnRow(rule, both);
  }

  /** What the row lets through in a column; a dash for anything. */
  String test(DmnInput.Column column) {
    return Optional.ofNullable(tests.get(column)).orElse("-");
  }
}
