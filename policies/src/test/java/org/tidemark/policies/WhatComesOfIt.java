package org.tidemark.policies;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.tidemark.count.Derived;
import org.tidemark.count.Deriving;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.load.FindingsLoader;
import org.tidemark.load.RecordLoader;
import org.tidemark.model.Findings;
import org.tidemark.model.Tray;
import org.tidemark.source.Loaded;
import org.tidemark.source.Severity;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/** All that comes of asking a small policy one question, as lines that a list can name. */
final class WhatComesOfIt {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final String SMALL = Expressible.text("small-policy");
  private static final String LAYER = Expressible.text("small-layer");
  private static final String USUAL = Expressible.text("usual-case");

  private final List<String> lines = new ArrayList<>();

  /** What comes of a piece of a list, asked in one way. */
  static List<String> of(Expressible.Part part, Expressible.Try attempt) {
    return of(policy(part), attempt);
  }

  /** The same without the piece's own rule. */
  static List<String> without(Expressible.Part part, Expressible.Try attempt) {
    return of(Snippets.alone(Snippets.over(SMALL, part.policy())), attempt);
  }

  private static Loaded<EffectivePolicy> policy(Expressible.Part part) {
    String whole = Snippets.over(SMALL, part.policy());
    String ruled = part.rule().isEmpty() ? whole : withRule(whole, part.rule());
    return part.layer().isEmpty()
        ? Snippets.alone(ruled)
        : Snippets.layered(ruled, Snippets.over(LAYER, part.layer()));
  }

  /** The rules of the question `use` stand last among the small policy's questions. */
  private static String withRule(String whole, String rule) {
    if (rule.startsWith("{")) {
      return Snippets.longer(
          whole, "questions", "      - {rule: said-here, " + rule.substring(1) + "\n");
    }
    String indented = rule.lines().map(l -> "        " + l + "\n").collect(Collectors.joining());
    return Snippets.longer(whole, "questions", "      - rule: said-here\n" + indented);
  }

  private static List<String> of(Loaded<EffectivePolicy> loaded, Expressible.Try attempt) {
    WhatComesOfIt all = new WhatComesOfIt();
    for (Severity severity : Severity.values()) {
      String word = severity.name().toLowerCase(Locale.ROOT);
      Snippets.remarks(loaded, severity).forEach(e -> all.lines.add(word + " " + e));
    }
    loaded.match(policy -> all.ask(policy, attempt), broken -> List.of());
    return List.copyOf(all.lines);
  }

  private List<String> ask(EffectivePolicy policy, Expressible.Try attempt) {
    lines.add("loads");
    policy.care().trays().forEach(this::tray);
    policy
        .care()
        .records()
        .forEach(r -> r.fields().forEach(f -> lines.add("form " + r.name() + ": " + f)));
    derived(policy, attempt)
        .match(
            derived -> {
              answer(policy, attempt, derived);
              return lines;
            },
            errors -> {
              errors.forEach(
                  e -> lines.add("refused " + e.code().id() + " «" + e.at().text() + "»"));
              return lines;
            });
    return lines;
  }

  private static Loaded<Derived> derived(EffectivePolicy policy, Expressible.Try attempt) {
    Findings entered = findings(policy, attempt);
    return attempt
        .record()
        .map(
            node ->
                RecordLoader.load(node, policy.vocabulary())
                    .match(
                        record -> Deriving.of(policy).derive(entered, record),
                        Loaded::<Derived>broken))
        .orElseGet(() -> Loaded.good(Derived.of(entered)));
  }

  /** The usual case, and in its place what the list says of this one. */
  private static Findings findings(EffectivePolicy policy, Expressible.Try attempt) {
    Map<String, Findings.Entry> all =
        new LinkedHashMap<>(
            load(policy, Shipped.sound(new YamlReader().read(SourceText.of("usual", USUAL)))));
    attempt.open().forEach(all::remove);
    attempt.with().ifPresent(node -> all.putAll(load(policy, node)));
    return new Findings(all);
  }

  private static Map<String, Findings.Entry> load(EffectivePolicy policy, YamlNode node) {
    return Shipped.sound(FindingsLoader.load(node, policy.vocabulary())).entries();
  }

  private void tray(Tray tray) {
    String whom =
        tray.forWhom().stream()
            .map(c -> " for " + String.join(" or ", c.options()))
            .collect(Collectors.joining());
    tray.items().forEach(i -> lines.add("tray " + tray.name() + whom + ": " + i));
    tray.never().forEach(i -> lines.add("tray " + tray.name() + whom + ": never: " + i));
  }

  private void answer(EffectivePolicy policy, Expressible.Try attempt, Derived derived) {
    LocalDate day = attempt.day().map(LocalDate::parse).orElse(TODAY);
    Decision decision =
        Decider.of(policy, attempt.question())
            .orElseThrow()
            .decide(derived.findings(), day)
            .alongside(derived.notCounted(), derived.due());
    lines.add(decision.outcome().word());
    lines.add("kind " + decision.kind().word());
    decision
        .reasons()
        .forEach(r -> lines.add("fires " + r.rule() + (r.setAside() ? ", set aside" : "")));
    decision.reasons().forEach(r -> lines.add("about " + r.about().word()));
    decision.reasons().forEach(r -> r.because().ifPresent(b -> lines.add("because " + b)));
    decision.ask().forEach(n -> lines.add("asks " + n.finding()));
    decision.next().forEach(n -> lines.add("next " + n));
    decision.call().forEach(c -> lines.add("call " + c.who()));
    decision
        .doesNotCount()
        .forEach(d -> lines.add("does not count " + d.finding() + ": " + d.because()));
    decision.cautions().forEach(c -> lines.add("mind " + c));
    decision.writeDown().forEach(w -> lines.add("write down " + w));
    derived
        .findings()
        .entries()
        .forEach((name, e) -> lines.add("known " + name + ": " + e.seen().words()));
  }

  /** What a nurse is told to do. */
  static List<String> told(List<String> lines) {
    return lines.stream()
        .filter(
            l ->
                List.of("proceed", "hold", "escalate").contains(l)
                    || l.startsWith("next ")
                    || l.startsWith("call "))
        .toList();
  }
}
