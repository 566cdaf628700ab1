package org.tidemark.load;

import java.util.List;
import java.util.Optional;
import org.tidemark.model.Condition;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;

/** Reads {@code some-of}: how many, and of what. */
final class SomeOfReader {
  private final ConditionReader conditions;
  private final Problems problems;

  SomeOfReader(ConditionReader conditions, Problems problems) {
    this.conditions = conditions;
    this.problems = problems;
  }

  Optional<Condition> read(YamlNode node) {
    Fields fields = Fields.of(node, "`some-of`", problems);
    Optional<Located<String>> typed = fields.requiredText("how-many");
    Optional<Integer> howMany =
        typed.flatMap(
            t -> Scalars.count(t, "write how many of them must hold, such as 2", problems));
    Optional<YamlNode> of = fields.required("of");
    List<Condition> parts = of.map(n -> conditions.alternatives(n, "`of`")).orElse(List.of());
    of.ifPresent(this::eachItsOwn);
    fields.done();
    if (howMany.isEmpty() || parts.isEmpty()) {
      return Optional.empty();
    }
    if (howMany.get() > parts.size()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.CANNOT_HOLD,
                  typed.orElseThrow().span(),
                  howMany.get() + " of " + parts.size() + " can never hold")
              .help("ask for " + parts.size() + " or fewer, or add to `of`"));
      return Optional.empty();
    }
    return Optional.of(new Condition.SomeOf(howMany.get(), parts));
  }

  /** Two parts that look at one finding and nothing else would count one observation twice. */
  private void eachItsOwn(YamlNode of) {
    List<YamlMap.Entry> alone =
        of instanceof YamlList list
            ? list.items().stream()
                .filter(i -> i instanceof YamlMap map && map.entries().size() == 1)
                .map(i -> ((YamlMap) i).entries().get(0))
                .toList()
            : List.of();
    for (int i = 0; i < alone.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (alone.get(i).key().text().equals(alone.get(j).key().text())) {
          countedTwice(alone.get(j), alone.get(i));
        }
      }
    }
  }

  private void countedTwice(YamlMap.Entry first, YamlMap.Entry second) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.DUPLICATE_NAME,
                second.key().span(),
                "`" + second.key().text() + "` would count twice")
            .and(first.key().span(), "it is counted here")
            .help("make one part of the two; one finding is one thing seen"));
  }
}
