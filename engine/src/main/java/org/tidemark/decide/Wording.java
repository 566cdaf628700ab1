package org.tidemark.decide;

import java.time.LocalDate;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Contact;
import org.tidemark.model.Header;
import org.tidemark.model.Rule;

/**
 * The words of a question's answers, which are the same each time: each rule's are made when it
 * first speaks, since a single answer needs few of them, and then kept.
 */
final class Wording {
  private final CompiledQuestion compiled;
  private final EffectivePolicy policy;
  private final IdentityHashMap<CompiledRule, Integer> index = new IdentityHashMap<>();
  private final @Nullable Said[] said;
  private final Stamp stamp;
  private final List<String> writeDown;
  private final List<String> always;
  private final List<String> afterReview;

  Wording(CompiledQuestion compiled) {
    this.compiled = compiled;
    this.policy = compiled.policy();
    for (int i = 0; i < compiled.rules().size(); i++) {
      index.put(compiled.rules().get(i), i);
    }
    this.said = new Said[index.size()];
    this.stamp = stamp(policy);
    this.writeDown = records();
    this.always = Cautions.of(policy.header(), false);
    this.afterReview = Cautions.of(policy.header(), true);
  }

  Stamp stamp() {
    return stamp;
  }

  /** What to write down. */
  List<String> writeDown() {
    return writeDown;
  }

  /** What to bear in mind with every answer of that day. */
  List<String> cautions(LocalDate today) {
    List<String> usual = policy.header().reviewPassed(today) ? afterReview : always;
    if (policy.departed().isEmpty()) {
      return usual;
    }
    return Stream.concat(policy.departed().stream().map(d -> d.caution(today)), usual.stream())
        .toList();
  }

  /** What a rule of this question says. Two threads may both make it, and make the same. */
  Said of(CompiledRule rule) {
    int i = index.getOrDefault(rule, -1);
    Said known = said[i];
    if (known == null) {
      known = said(rule.rule());
      said[i] = known;
    }
    return known;
  }

  private Said said(Rule rule) {
    return new Said(
        reason(rule, false),
        reason(rule, true),
        rule.says().next().stream().map(policy::fill).toList(),
        call(rule),
        rule.says().doesNotRuleOut().map(d -> "This does not rule out: " + policy.fill(d)));
  }

  private Reason reason(Rule rule, boolean setAside) {
    return new Reason(
        rule.name(),
        rule.layer(),
        rule.effect(),
        rule.about(),
        rule.says().because().map(policy::fill),
        rule.says().doesNotRuleOut().map(policy::fill),
        setAside,
        rule.backing().standing(),
        rule.backing().sources());
  }

  private List<Contact> call(Rule rule) {
    Map<String, Contact> all = new LinkedHashMap<>();
    rule.contact().flatMap(policy::contact).ifPresent(c -> withItsStandIn(c, all));
    return List.copyOf(all.values());
  }

  private void withItsStandIn(Contact contact, Map<String, Contact> all) {
    if (all.putIfAbsent(contact.name(), contact) == null) {
      contact.otherwise().flatMap(policy::contact).ifPresent(c -> withItsStandIn(c, all));
    }
  }

  private List<String> records() {
    return policy.care().records().stream()
        .filter(r -> r.isWrittenAt(compiled.question().name()))
        .flatMap(r -> r.fields().stream())
        .map(policy::fill)
        .distinct()
        .toList();
  }

  private static Stamp stamp(EffectivePolicy policy) {
    Header header = policy.header();
    Set<String> below = new LinkedHashSet<>();
    policy.layers().forEach(l -> below.add(l.name()));
    below.remove(header.name());
    return new Stamp(
        header.name(),
        header.title(),
        header.owner(),
        header.edition(),
        header.status(),
        header.reviewBy(),
        List.copyOf(below));
  }
}
