package org.tidemark.layer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.model.Departure;
import org.tidemark.model.Policy;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;

/**
 * Decides about whatever would loosen: it is refused, unless the layer that does it declared it.
 * What was declared and loosens nothing is refused too.
 */
final class Departures {
  /** What else may be done about a refusal. */
  static final String OR_DECLARE = "; or declare it under `departs-from-floor`";

  private final Problems problems;
  private final List<Departure> declared = new ArrayList<>();
  private final Map<Departure, Departed> departed = new LinkedHashMap<>();

  Departures(Problems problems) {
    this.problems = problems;
  }

  void add(Policy layer) {
    declared.addAll(layer.declared().departures());
  }

  /**
   * Takes note of something that loosens.
   *
   * @param layer the layer that does it
   * @param kind what sort of thing it is
   * @param name its name
   * @param refusal what is said if nobody declared it; its sentence is kept if somebody did
   */
  void looser(
      String layer, Departure.Kind kind, String name, Optional<Place> below, Diagnostic refusal) {
    Optional<Departure> declaration =
        declared.stream()
            .filter(d -> d.layer().equals(layer) && d.kind() == kind && d.name().equals(name))
            .findFirst();
    if (declaration.isEmpty()) {
      problems.add(refusal);
      return;
    }
    note(declaration.get(), refusal.message(), below);
  }

  private void note(Departure departure, String what, Optional<Place> below) {
    departed.merge(
        departure,
        new Departed(departure, what, below),
        (one, more) -> new Departed(departure, one.what() + "; " + more.what(), one.below()));
  }

  /** Whether a layer declares that an allow rule of its own rests on a test. */
  boolean accepts(String layer, String test, String rule, String what) {
    Optional<Departure> declaration =
        declared.stream()
            .filter(d -> d.layer().equals(layer) && d.kind() == Departure.Kind.TEST)
            .filter(d -> d.name().equals(test) && d.rule().equals(Optional.of(rule)))
            .findFirst();
    declaration.ifPresent(d -> note(d, what, Optional.empty()));
    return declaration.isPresent();
  }

  /** The names that a layer declares it leaves out or changes. */
  List<String> names(String layer, Departure.Kind kind) {
    return declared.stream()
        .filter(d -> d.layer().equals(layer) && d.kind() == kind)
        .map(Departure::name)
        .toList();
  }

  /** The tests that some layer accepts. */
  List<String> accepted() {
    return declared.stream()
        .filter(d -> d.kind() == Departure.Kind.TEST)
        .map(Departure::name)
        .toList();
  }

  /** Takes note that something of a layer below is left out. */
  void leftOut(String layer, Departure.Kind kind, String name, Place below) {
    declared.stream()
        .filter(d -> d.layer().equals(layer) && d.kind() == kind && d.name().equals(name))
        .forEach(
            d ->
                note(
                    d,
                    "the " + kind.word() + " `" + name + "` of the layer below does not apply",
                    Optional.of(below)));
  }

  /** What was declared and came to something. */
  List<Departed> departed() {
    return List.copyOf(departed.values());
  }

  /** A declaration that comes to nothing would tell every reader of a danger that there is not. */
  void noneIdle() {
    declared.stream().filter(d -> !departed.containsKey(d)).forEach(this::idle);
  }

  private void idle(Departure departure) {
    String kind = departure.kind().word();
    problems.add(
        Diagnostic.error(
                DiagnosticCode.DEPARTS_FROM_NOTHING,
                departure.place().span(),
                "nothing is looser here in the " + kind + " `" + departure.name() + "`")
            .help("correct the name, or delete the departure"));
  }
}
