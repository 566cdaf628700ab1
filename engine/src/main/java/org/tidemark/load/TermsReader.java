package org.tidemark.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidemark.model.Condition;
import org.tidemark.model.Rule;
import org.tidemark.model.Term;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;

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
    // All names first: a term made of a later one is told so, and not that the name is unknown.
    policy.names("terms").forEach(known::learnTerm);
    return policy.named("terms", this::term);
  }

  private Term term(YamlMap.Entry entry) {
    String name = entry.key().text();
    names.give(name, entry.key().span());
    notAFinding(entry);
    Fields fields = Fields.of(entry.value(), "the term `" + name + "`", problems);
    List<Condition> alternatives = alternatives(fields, name);
    Rule.Backing backing = backings.read(fields);
    fields.done();
    return new Term(
        name, alternatives, backing.standing(), backing.sources(), Place.at(entry.key().span()));
  }

  /** A term holds when one of its alternatives does, or so many of the parts of its some-of. */
  private List<Condition> alternatives(Fields term, String name) {
    ConditionReader conditions = new ConditionReader(known, problems);
    List<Condition> all = new ArrayList<>();
    Optional<YamlNode> some = term.optional("some-of");
    some.ifPresent(n -> oneLevel(partsOf(n), name));
    Optional<YamlNode> any = some.isPresent() ? term.optional("any-of") : term.required("any-of");
    any.map(n -> oneLevel(n, name))
        .ifPresent(n -> all.addAll(conditions.alternatives(n, "`any-of`")));
    some.flatMap(conditions::someOf).ifPresent(all::add);
    return all;
  }

  private static YamlNode partsOf(YamlNode someOf) {
    return someOf instanceof YamlMap map
        ? map.entry("of").map(YamlMap.Entry::value).orElse(someOf)
        : someOf;
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

  private YamlNode oneLevel(YamlNode alternatives, String term) {
    if (alternatives instanceof YamlList list) {
      list.items().stream()
          .flatMap(i -> i instanceof YamlMap map ? map.entries().stream() : Stream.empty())
          .filter(e -> known.isTerm(e.key().text()))
          .forEach(e -> nested(e, term));
    }
    return alternatives;
  }

  private void nested(YamlMap.Entry part, String term) {
    if (known.vocabulary().finding(part.key().text()).isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_SHAPE,
                  part.key().span(),
                  "the term `" + term + "` is made of another term")
              .help("terms lie one level deep: write the findings themselves"));
    }
  }
}
