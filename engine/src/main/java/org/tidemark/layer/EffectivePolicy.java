package org.tidemark.layer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.model.Barred;
import org.tidemark.model.Care;
import org.tidemark.model.Contact;
import org.tidemark.model.Counts;
import org.tidemark.model.Departure;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Header;
import org.tidemark.model.Limit;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Policy;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Statement;
import org.tidemark.model.Term;
import org.tidemark.model.Vocabulary;

/**
 * What a stack of layers says as a whole: every number settled, every rule in place, and who said
 * what.
 */
public final class EffectivePolicy {
  private final List<Policy> parts;
  private final Header header;
  private final List<Header> layers;
  private final Vocabulary vocabulary;
  private final Map<String, List<Say>> values;
  private final Map<String, NamedBand> bands = new LinkedHashMap<>();
  private final Map<String, Term> terms = new LinkedHashMap<>();
  private final List<Barred> barred;
  private final Map<String, EffectiveQuestion> questions = new LinkedHashMap<>();
  private final Care care;
  private final List<String> notStated;
  private final List<Departed> departed;

  EffectivePolicy(
      List<Policy> parts,
      Vocabulary vocabulary,
      Map<String, List<Say>> values,
      List<NamedBand> bands,
      List<Term> terms,
      List<Barred> barred,
      List<EffectiveQuestion> questions,
      Care care,
      List<String> notStated,
      List<Departed> departed) {
    this.parts = List.copyOf(parts);
    this.layers = parts.stream().map(Policy::header).toList();
    this.header = layers.get(layers.size() - 1);
    this.vocabulary = vocabulary;
    this.values = new LinkedHashMap<>(values);
    bands.forEach(b -> this.bands.put(b.name(), b));
    terms.forEach(t -> this.terms.put(t.name(), t));
    this.barred = List.copyOf(barred);
    questions.forEach(q -> this.questions.put(q.name(), q));
    this.care = care;
    this.notStated = List.copyOf(notStated);
    this.departed = List.copyOf(departed);
  }

  /**
   * What one layer says of a value.
   *
   * @param layer the layer's name
   * @param value the value as it stands there
   */
  public record Say(String layer, PolicyValue value) {}

  /** The top layer's header: the policy's own. */
  public Header header() {
    return header;
  }

  /** Whether both were read from the same words, wherever those stand. */
  public boolean saysTheSameAs(EffectivePolicy other) {
    return parts.equals(other.parts);
  }

  /** The headers of all layers, the lowest first. */
  public List<Header> layers() {
    return layers;
  }

  /** The policy that this one builds on, as it stands without it. */
  public Optional<EffectivePolicy> below() {
    return Layering.below(vocabulary, parts);
  }

  /**
   * What this policy must be no looser than: the policy below it, with what is declared as a
   * departure from that taken over.
   */
  public Optional<EffectivePolicy> heldAgainst() {
    return below().map(b -> new TakenOver(b, this).whole());
  }

  /** In what it, or a layer below it, is looser than it might be, and says so. */
  public List<Departed> departed() {
    return departed;
  }

  /** What it departs in itself, from the layer below it or from what counts. */
  List<Departed> departedHere(Departure.Kind kind) {
    return departed.stream()
        .filter(d -> d.departure().layer().equals(name()) && d.departure().kind() == kind)
        .toList();
  }

  /** The layers as they were written, the lowest first. */
  public List<Policy> parts() {
    return parts;
  }

  public String name() {
    return header.name();
  }

  public Vocabulary vocabulary() {
    return vocabulary;
  }

  /** The values as they hold, in the order in which they were first written. */
  public List<PolicyValue> values() {
    return values.keySet().stream().map(name -> value(name).orElseThrow()).toList();
  }

  public Optional<PolicyValue> value(String name) {
    return Optional.ofNullable(values.get(name)).map(says -> says.get(says.size() - 1).value());
  }

  /** How far readings of a finding may be off to either side; nothing if no layer says so. */
  public Optional<BigDecimal> howFarOff(String finding) {
    return values().stream()
        .filter(v -> v.howFarOff().equals(Optional.of(finding)))
        .flatMap(v -> v.number().stream())
        .max(Comparator.naturalOrder());
  }

  /** Each finding whose readings may be off, in asking order. */
  public List<HowFar> howFarOff() {
    List<HowFar> all = new ArrayList<>();
    for (Finding finding : vocabulary.findings()) {
      if (finding.domain() instanceof Domain.Measure measure) {
        howFarOff(finding.name()).ifPresent(by -> all.add(new HowFar(finding, measure, by)));
      }
    }
    return all;
  }

  /** Every layer's say about a value, the lowest first; the last one holds. */
  public List<Say> says(String name) {
    return List.copyOf(values.getOrDefault(name, List.of()));
  }

  public Optional<NamedBand> band(String name) {
    return Optional.ofNullable(bands.get(name));
  }

  public List<NamedBand> bands() {
    return List.copyOf(bands.values());
  }

  public Optional<Term> term(String name) {
    return Optional.ofNullable(terms.get(name));
  }

  public List<Term> terms() {
    return List.copyOf(terms.values());
  }

  /** The tests that must not count, with the sources of the ban. */
  public List<Barred> barred() {
    return barred;
  }

  public Optional<EffectiveQuestion> question(String name) {
    return Optional.ofNullable(questions.get(name));
  }

  public List<EffectiveQuestion> questions() {
    return List.copyOf(questions.values());
  }

  /**
   * What it says is always or never so: its own statements, and those of the layers below that ask
   * for caution.
   */
  public List<Statement> statements() {
    Policy top = parts.get(parts.size() - 1);
    return parts.stream()
        .flatMap(p -> p.declared().statements().stream())
        .filter(s -> s.layer().equals(top.name()) || s.asksForCaution())
        .toList();
  }

  /** One of these statements. */
  public Optional<Statement> statement(String wanted) {
    return statements().stream().filter(s -> s.name().equals(wanted)).findFirst();
  }

  /** Whether a question has this rule from the one that it comes after. */
  public boolean isBorrowed(EffectiveQuestion question, String rule) {
    return question.after().flatMap(this::question).flatMap(q -> q.rule(rule)).isPresent();
  }

  public Care care() {
    return care;
  }

  public Optional<Contact> contact(String name) {
    return care.contacts().stream().filter(c -> c.name().equals(name)).findFirst();
  }

  /** Which items of a tube's record count, by every layer. */
  public Counts counts() {
    return parts.stream().map(Policy::counts).reduce(Counts.NONE, Counts::and);
  }

  /** What the policy leaves open, in words. */
  public List<String> notStated() {
    return notStated;
  }

  /** The number at the end of a band, if the policy states one. */
  public Optional<BigDecimal> number(Limit limit) {
    if (limit instanceof Limit.Fixed fixed) {
      return Optional.of(fixed.number());
    }
    return limit instanceof Limit.Named named
        ? value(named.value()).flatMap(PolicyValue::number)
        : Optional.empty();
  }

  /** A text of the policy with its numbers filled in. */
  public String fill(String text) {
    return new Printed(this).fill(text);
  }

  /** A value with its unit, in words. */
  public String print(PolicyValue value) {
    return new Printed(this).print(value);
  }
}
