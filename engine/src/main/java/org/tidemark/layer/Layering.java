package org.tidemark.layer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidemark.load.Acceptances;
import org.tidemark.model.Barred;
import org.tidemark.model.Departure;
import org.tidemark.model.Finding;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Policy;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Statement;
import org.tidemark.model.Term;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;

/**
 * Puts layers on one another: floor, hospital, unit. A layer may tighten; whatever would loosen is
 * refused with both places.
 */
public final class Layering {
  private final Vocabulary vocabulary;
  private final Problems problems = new Problems();
  private final Map<String, List<EffectivePolicy.Say>> values = new LinkedHashMap<>();
  private final Map<String, NamedBand> bands = new LinkedHashMap<>();
  private final Map<String, Term> terms = new LinkedHashMap<>();
  private final Map<String, Barred> barred = new LinkedHashMap<>();
  private final Map<String, Statement> statements = new LinkedHashMap<>();
  private final Set<String> notStated = new LinkedHashSet<>();
  private final Departures departures = new Departures(problems);
  private final QuestionStack questions = new QuestionStack(problems, departures);
  private final CareStack care = new CareStack(problems, departures);

  private Layering(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /**
   * Combines layers and checks the whole.
   *
   * @param vocabulary the findings that they speak of
   * @param layers the lowest first
   */
  public static Loaded<EffectivePolicy> combine(Vocabulary vocabulary, List<Policy> layers) {
    List<Finding> own = layers.stream().flatMap(l -> l.ownFindings().stream()).toList();
    return new Layering(vocabulary.with(own)).stack(layers);
  }

  /**
   * All layers but the top one. They were checked when the whole was combined, so they are sound by
   * themselves.
   */
  static Optional<EffectivePolicy> below(Vocabulary vocabulary, List<Policy> layers) {
    if (layers.size() < 2) {
      return Optional.empty();
    }
    Layering below = new Layering(vocabulary);
    List<Policy> lower = layers.subList(0, layers.size() - 1);
    lower.forEach(below::add);
    return Optional.of(below.chained(lower));
  }

  private Loaded<EffectivePolicy> stack(List<Policy> layers) {
    layers.forEach(this::add);
    checkScopes(layers);
    if (problems.anyError()) {
      return broken(layers);
    }
    EffectivePolicy apart = whole(layers, questions.effective(care.calls()));
    PolicyChecks.check(apart, problems, departures);
    if (!problems.anyError()) {
      departures.noneIdle();
    }
    if (problems.anyError()) {
      return broken(layers);
    }
    EffectivePolicy policy = chained(layers);
    new WayChecks(policy, problems).check();
    return problems.anyError() ? broken(layers) : problems.conclude(() -> policy);
  }

  private Loaded<EffectivePolicy> broken(List<Policy> layers) {
    layers.forEach(l -> Acceptances.refuseErrors(l.header().control().accepted(), problems));
    return Loaded.broken(problems.sorted());
  }

  /** The whole, with each question resting on the one that it comes after. */
  private EffectivePolicy chained(List<Policy> layers) {
    EffectivePolicy apart = whole(layers, questions.effective(care.calls()));
    return whole(layers, new Chain(apart, problems).questions());
  }

  private EffectivePolicy whole(List<Policy> layers, List<EffectiveQuestion> asked) {
    return new EffectivePolicy(
        layers,
        vocabulary,
        values,
        List.copyOf(bands.values()),
        List.copyOf(terms.values()),
        barred.values().stream().filter(b -> !departures.accepted().contains(b.finding())).toList(),
        asked,
        care.whole(),
        List.copyOf(notStated),
        departures.departed());
  }

  private void add(Policy layer) {
    departures.add(layer);
    layer.values().forEach(v -> value(layer, v));
    layer.bands().forEach(this::band);
    layer.terms().forEach(t -> term(layer.name(), t));
    layer.barred().forEach(this::barred);
    questions.add(layer);
    care.add(layer);
    notStated.addAll(layer.notStated());
    layer.declared().statements().forEach(this::statement);
  }

  private void value(Policy layer, PolicyValue value) {
    List<EffectivePolicy.Say> says =
        values.computeIfAbsent(value.name(), name -> new ArrayList<>());
    if (!says.isEmpty()) {
      PolicyValue below = says.get(says.size() - 1).value();
      boolean byPlan = new PlanChecks(layer.header(), problems).sets(below, value);
      if (!byPlan) {
        new Tightening(departures, layer.name()).check(below, value);
      }
    }
    says.add(new EffectivePolicy.Say(layer.name(), about(says, value)));
  }

  /** What a value is about is said once, and holds in every layer above. */
  private static PolicyValue about(List<EffectivePolicy.Say> below, PolicyValue value) {
    return below.isEmpty() ? value : value.aboutTheSameAs(below.get(below.size() - 1).value());
  }

  private void band(NamedBand band) {
    NamedBand below = bands.putIfAbsent(band.name(), band);
    if (below != null) {
      alreadyDefined(band.place().span(), "the band `" + band.name() + "`", below.place().span());
    }
  }

  private void term(String layer, Term term) {
    Term below = terms.get(term.name());
    if (below != null && !Narrowing.eachWithinSome(below.alternatives(), term.alternatives())) {
      departures.looser(
          layer,
          Departure.Kind.TERM,
          term.name(),
          Optional.of(below.place()),
          Diagnostic.error(
                  DiagnosticCode.LOOSER_THAN_FLOOR,
                  term.place().span(),
                  "the term `" + term.name() + "` leaves out alternatives of the layer below")
              .and(below.place().span(), "the layer below has it here")
              .help(
                  "repeat every alternative of the layer below and add to them"
                      + Departures.OR_DECLARE));
    }
    if (below != null) {
      questions.termIsWidened(layer, term, below);
      care.termIsWidened(layer, term, below);
    }
    terms.put(term.name(), term);
  }

  private void statement(Statement statement) {
    Statement below = statements.putIfAbsent(statement.name(), statement);
    if (below != null) {
      alreadyDefined(
          statement.place().span(),
          "the statement `" + statement.name() + "`",
          below.place().span());
    }
  }

  private void barred(Barred test) {
    barred.merge(test.finding(), test, Layering::bothSources);
  }

  private static Barred bothSources(Barred below, Barred above) {
    Set<String> sources = new LinkedHashSet<>(below.sources());
    sources.addAll(above.sources());
    return new Barred(
        below.finding(), below.options(), below.because(), below.words(), List.copyOf(sources));
  }

  private void alreadyDefined(Span here, String what, Span there) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.ALREADY_DEFINED, here, what + " is already defined by a layer below")
            .and(there, "it is defined here")
            .help("use it as it is, or give yours another name"));
  }

  private void checkScopes(List<Policy> layers) {
    for (int i = 1; i < layers.size(); i++) {
      new ScopeCheck(layers.get(i - 1).header(), layers.get(i).header(), problems).check();
    }
    Optional<String> missing = layers.get(0).header().buildsOn();
    missing.ifPresent(
        name ->
            problems.add(
                Diagnostic.error(
                        DiagnosticCode.MISSING_FLOOR,
                        layers.get(0).header().place().span(),
                        "this builds on `" + name + "`, which was not given")
                    .help("keep the policy that it builds on where the program can find it")));
  }
}
