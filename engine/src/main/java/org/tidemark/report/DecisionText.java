package org.tidemark.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.decide.CountsAs;
import org.tidemark.decide.Decision;
import org.tidemark.decide.DoesNotCount;
import org.tidemark.decide.Grounds;
import org.tidemark.decide.Need;
import org.tidemark.decide.Reason;
import org.tidemark.decide.Stamp;
import org.tidemark.model.Axis;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Contact;
import org.tidemark.model.Days;
import org.tidemark.model.Option;
import org.tidemark.model.Outcome;
import org.tidemark.model.Vocabulary;

/** An answer as text: the answer first, then what to do, then why. */
public final class DecisionText {
  private final Decision decision;
  private final Grounds grounds;
  private final Vocabulary vocabulary;
  private final Sources sources;
  private final Sheet sheet = new Sheet();

  private DecisionText(Decision decision, Grounds grounds, Vocabulary vocabulary, Sources sources) {
    this.decision = decision;
    this.grounds = grounds;
    this.vocabulary = vocabulary;
    this.sources = sources;
  }

  /**
   * The answer.
   *
   * @param decision the answer
   * @param grounds what lies behind it
   * @param vocabulary the findings that it speaks of
   * @param bibliography what citations resolve into, when it is at hand
   */
  public static String of(
      Decision decision,
      Grounds grounds,
      Vocabulary vocabulary,
      Optional<Bibliography> bibliography) {
    return new DecisionText(decision, grounds, vocabulary, new Sources(bibliography)).write();
  }

  private String write() {
    Banner.on(sheet, decision.outcome(), decision.word());
    sheet.paragraph(decision.asks()).paragraph(decision.kind().sentence());
    next();
    call();
    why();
    new LeastText(sheet).write(grounds);
    doesNotCount();
    bulleted(
        "Counts as more than was read, since a reading may be off",
        decision.countsAs().stream().map(CountsAs::sentence).toList());
    ask();
    grounds.routes().ifPresent(r -> new RoutesText(sheet, vocabulary).write(r));
    bulleted("Write down", decision.writeDown());
    bulleted("Bear in mind", decision.cautions());
    stamp();
    publications();
    return sheet.toString();
  }

  private void next() {
    if (!decision.next().isEmpty()) {
      sheet.heading("Do next").numbered(decision.next());
    }
  }

  private void call() {
    if (!decision.call().isEmpty()) {
      sheet.heading("Call");
      decision.call().forEach(this::call);
    }
  }

  private void call(Contact contact) {
    String when = contact.when();
    sheet.hanging("  - ", contact.who() + ". When: " + when + (when.endsWith(".") ? "" : "."));
  }

  /** One block an axis, so that no reason hides another; the most cautious rule of each first. */
  private void why() {
    if (!decision.reasons().isEmpty()) {
      sheet.heading("Why");
      for (Axis axis : Axis.values()) {
        String label = "  " + axis.label() + ": ";
        decision.reasons().stream()
            .filter(r -> r.about() == axis)
            .forEach(r -> sheet.hanging(label, sentence(r)));
      }
    }
  }

  private String sentence(Reason reason) {
    StringBuilder all = new StringBuilder(does(reason));
    reason.because().ifPresent(because -> all.append(' ').append(because));
    all.append(" [").append(reason.rule());
    reason.sources().forEach(source -> all.append(", ").append(source));
    return all.append(']').toString();
  }

  private String does(Reason reason) {
    if (reason.setAside()) {
      return "Would allow, but does not count here.";
    }
    return switch (reason.effect()) {
      case ALLOW -> decision.outcome() == Outcome.PROCEED ? "Allows." : "Alone it would allow.";
      case SET_ASIDE -> "Takes the force from a check.";
      case NOT_YET -> "Not yet.";
      case HOLD -> "Holds.";
      case ESCALATE -> "Calls for help.";
    };
  }

  private void doesNotCount() {
    if (!decision.doesNotCount().isEmpty()) {
      sheet.heading("Does not count");
      for (DoesNotCount test : decision.doesNotCount()) {
        sheet.hanging("  - ", test.found() + ". " + test.because() + cited(test.sources()));
      }
    }
  }

  private static String cited(List<String> ids) {
    return ids.isEmpty() ? "" : " [" + String.join(", ", ids) + "]";
  }

  private void ask() {
    if (!decision.ask().isEmpty()) {
      Set<String> open = new LinkedHashSet<>();
      decision.ask().forEach(need -> open.add(need.finding()));
      List<String> first =
          decision.ask().stream().filter(n -> !hangs(n, open)).map(this::asked).toList();
      sheet.heading("Still to find out, in this order").numbered(first);
      if (first.size() < open.size()) {
        sheet.hanging("  ", "What is asked after that depends on these answers.");
      }
    }
  }

  /** Whether a finding is asked only after another one that is open as well. */
  private boolean hangs(Need need, Set<String> open) {
    return vocabulary.require(need.finding()).applies().stream()
        .anyMatch(parent -> open.contains(parent.finding()));
  }

  /** What was read is not asked as if it were not; it may be read anew where that is possible. */
  private String asked(Need need) {
    if (decision.countsAs(need).isEmpty()) {
      return need(need);
    }
    return need.asks()
        + " It was read, and the reading leaves this open."
        + vocabulary.require(need.finding()).renew().map(r -> " " + r).orElse("");
  }

  static String need(Need need) {
    List<String> may = new ArrayList<>();
    if (!need.unit().isEmpty()) {
      may.add("a reading in " + need.unit());
    }
    need.options().stream().map(Option::label).forEach(may::add);
    return need.asks() + " (" + String.join(" / ", may) + ")";
  }

  private void bulleted(String heading, List<String> items) {
    if (!items.isEmpty()) {
      sheet.heading(heading).bulleted(items);
    }
  }

  private void stamp() {
    Stamp stamp = decision.stamp();
    sheet.heading("Policy");
    sheet.hanging("  ", stamp.title() + ", " + stamp.owner() + ".");
    sheet.hanging(
        "  ",
        stamp.policy()
            + ", edition "
            + stamp.edition()
            + ", "
            + stamp.status().word()
            + (stamp.builtOn().isEmpty() ? "" : ", built on " + String.join(", ", stamp.builtOn()))
            + ".");
    sheet.hanging(
        "  ",
        stamp
            .reviewBy()
            .map(day -> "Review by " + Days.of(day) + ".")
            .orElse("No review date is stated."));
  }

  private void publications() {
    Set<String> ids = new LinkedHashSet<>();
    decision.reasons().forEach(r -> ids.addAll(r.sources()));
    decision.doesNotCount().forEach(t -> ids.addAll(t.sources()));
    List<String> known = ids.stream().filter(id -> sources.publication(id).isPresent()).toList();
    if (!known.isEmpty()) {
      sheet.heading("Sources");
      known.forEach(id -> sheet.hanging("  " + id + "  ", sources.publication(id).orElse("")));
    }
  }
}
