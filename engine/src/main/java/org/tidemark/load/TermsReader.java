package org.tidemark.load;

import java.util.List;
import org.tidemark.model.Condition;
import org.tidemark.model.Rule;
import org.tidemark.model.Term;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlMap;

/** Reads the terms: yes-or-no findings that the policy makes out of others, one level deep. */
final class TermsReader {
  private final Known known;
  private final Backings backings;
  private final Problems problems;
  private final Names names;

  TermsReader(Known known, Backings backings, Problems problems) {
    this.known = known;
    this.backings = backings;
    this.problems = problems;
    this.names = new Names("term", problems);
  }

  List<Term> read(Fields policy) {
    List<Term> terms = policy.named("terms", this::term);
    terms.forEach(t -> known.learnTerm(t.name()));
    return terms;
  }

  private Term term(YamlMap.Entry entry) {
    String name = entry.key().text();
    names.give(name, entry.key().span());
    notAFinding(entry);
    Fields fields = Fields.of(entry.value(), "the term `" + name + "`", problems);
    ConditionReader conditions = new ConditionReader(known, problems);
    List<Condition> alternatives =
        fields
            .required("any-of")
            .map(n -> conditions.alternatives(n, "`any-of`"))
            .orElse(List.of());
    alternatives.forEach(a -> oneLevel(a, entry));
    Rule.Backing backing = backings.read(fields);
    fields.done();
    return new Term(
        name, alternatives, backing.standing(), backing.sources(), Place.at(entry.key().span()));
  }

  private void notAFinding(YamlMap.Entry entry) {
    String name = entry.key().text();
    if (known.vocabulary().finding(name).isPresent()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.DUPLICATE_NAME,
                  entry.key().span(),
                  "`" + name + "` is the name of a finding")
              .help("give the term a name of its own"));
    }
  }

  private void oneLevel(Condition alternative, YamlMap.Entry entry) {
    boolean nested =
        alternative instanceof Condition.AllOf all
            && all.parts().stream().anyMatch(p -> p instanceof Condition.TermIs);
    if (nested) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_SHAPE,
                  entry.key().span(),
                  "the term `" + entry.key().text() + "` is made of another term")
              .help("terms lie one level deep: write the findings themselves"));
    }
  }
}
