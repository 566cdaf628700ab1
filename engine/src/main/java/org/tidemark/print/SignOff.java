package org.tidemark.print;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tidemark.decide.Decision;
import org.tidemark.decide.Need;
import org.tidemark.decide.Reason;
import org.tidemark.layer.Departed;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Effect;
import org.tidemark.model.Header;
import org.tidemark.model.Outcome;
import org.tidemark.prove.Change;
import org.tidemark.prove.Claim;
import org.tidemark.prove.Comparison;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Verdict;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.Place;
import org.tidemark.trial.AnswerTable;

/** Gathers what a committee needs on one sheet before it approves a policy. */
public final class SignOff {
  private final EffectivePolicy policy;
  private final Optional<EffectivePolicy> earlier;
  private final LocalDate today;
  private final CardFiles files;

  /**
   * The sheet of one policy.
   *
   * @param policy the policy that is to be approved
   * @param earlier the edition that it takes the place of, if there is one
   * @param files where pages come from
   * @param today the day of the sheet
   */
  public SignOff(
      EffectivePolicy policy, Optional<EffectivePolicy> earlier, CardFiles files, LocalDate today) {
    this.policy = policy;
    this.earlier = earlier;
    this.files = files;
    this.today = today;
  }

  /**
   * What was worked out about the policy.
   *
   * @param tables what is answered at each limit
   * @param proofs what is proved
   * @param comparison how it differs from the earlier edition, if there is one
   * @param remarks warnings about its file
   * @param bibliography what citations resolve into
   */
  public record Findings(
      List<AnswerTable> tables,
      List<Proof> proofs,
      Optional<Comparison> comparison,
      List<Diagnostic> remarks,
      Bibliography bibliography) {
    public Findings {
      tables = List.copyOf(tables);
      proofs = List.copyOf(proofs);
      remarks = List.copyOf(remarks);
    }
  }

  /** The sheet as a page that stands alone. */
  public Loaded<String> page(Findings found) {
    return new CardPrinter(files).page(view(found));
  }

  SignOffView view(Findings found) {
    Header header = policy.header();
    return new SignOffView(
        header.title(),
        header.owner(),
        header.name(),
        Integer.toString(header.edition()),
        header.status().word(),
        new ForWhom(policy.vocabulary()).words(header.scope()),
        header.buildsOn().orElse("nothing"),
        header.reviewBy().map(CardDate::words).orElse("not stated"),
        CardDate.words(today),
        earlier.stream().map(SignOff::named).toList(),
        header.changed().map(Header.Changed::why).stream().toList(),
        written(),
        found.comparison().map(this::answered).orElse(List.of()),
        found.comparison().map(SignOff::note).orElse(""),
        found.tables().stream().map(this::table).toList(),
        policy.departed().stream().map(SignOff::departed).toList(),
        claims(found.proofs()),
        stated(found.proofs()),
        found.proofs().stream()
            .filter(p -> !p.verdict().proved())
            .flatMap(SignOff::notProved)
            .toList(),
        found.remarks().stream().filter(r -> !r.isAccepted()).map(SignOff::remark).toList(),
        found.remarks().stream().flatMap(SignOff::accepted).toList(),
        cards(),
        new SignOffAlerts(policy, found.bibliography()).answered(),
        new SignOffAlerts(policy, found.bibliography()).unanswered(),
        sources(found.bibliography()));
  }

  private static SignOffView.Departs departed(Departed one) {
    String below = one.below().map(Place::toString).orElse("the vocabulary");
    return new SignOffView.Departs(
        one.sentence(), one.departure().why(), one.departure().place() + "; " + below);
  }

  private static String named(EffectivePolicy edition) {
    return edition.header().title() + ", edition " + edition.header().edition();
  }

  private List<SignOffView.Changed> written() {
    if (earlier.isEmpty()) {
      return List.of();
    }
    Map<String, String> was = Written.by(earlier.get());
    Map<String, String> is = Written.by(policy);
    Set<String> all = new LinkedHashSet<>(is.keySet());
    all.addAll(was.keySet());
    return all.stream()
        .map(
            what ->
                new SignOffView.Changed(
                    what, was.getOrDefault(what, ""), is.getOrDefault(what, "")))
        .filter(c -> !c.was().equals(c.is()))
        .toList();
  }

  private List<SignOffView.Answered> answered(Comparison comparison) {
    return comparison.changes().stream().map(this::answered).toList();
  }

  private SignOffView.Answered answered(Change change) {
    String says =
        words(change.question(), change.from())
            + ", is now "
            + words(change.question(), change.to())
            + ", by the rule "
            + change.rule().replace('-', ' ');
    return new SignOffView.Answered(change.question() + ": was " + says, change.telling());
  }

  private String words(String question, Outcome outcome) {
    return policy.question(question).map(q -> q.word(outcome)).orElse(outcome.word());
  }

  private static String note(Comparison comparison) {
    if (!comparison.settled()) {
      return "Undecided: not every change could be looked for. Nothing follows from what is not listed.";
    }
    String note =
        comparison.changes().isEmpty()
            ? "No case is answered differently. This is proved over every case there can be."
            : "Every other case is answered as before. This is proved over every case there can be.";
    return comparison.readings().isEmpty()
        ? note
        : note + " " + String.join(" ", comparison.readings());
  }

  private SignOffView.Table table(AnswerTable table) {
    return new SignOffView.Table(
        table.question() + ". " + table.heading(),
        table.forWhom(),
        table.columns(),
        table.rows().stream()
            .map(
                r ->
                    new SignOffView.Row(
                        r.value(), r.limit(), r.answers().stream().map(SignOff::cell).toList()))
            .toList());
  }

  private static SignOffView.Cell cell(Optional<Decision> answer) {
    return answer
        .map(d -> new SignOffView.Cell(d.outcome().word(), d.word(), why(d)))
        .orElseGet(() -> new SignOffView.Cell("none", "Not asked", ""));
  }

  private static String why(Decision decision) {
    if (!decision.settled()) {
      return "still to find out: "
          + String.join(
              ", ", decision.ask().stream().map(Need::finding).map(SignOff::said).toList());
    }
    List<String> rules =
        decision.reasons().stream()
            .filter(r -> !r.setAside() && speaksFor(decision.outcome(), r.effect()))
            .map(Reason::rule)
            .map(SignOff::said)
            .toList();
    return rules.isEmpty() ? decision.kind().sentence() : String.join("; ", rules);
  }

  /** Whether a rule of that effect is why the answer is what it is. */
  private static boolean speaksFor(Outcome outcome, Effect effect) {
    return switch (outcome) {
      case PROCEED -> effect == Effect.ALLOW;
      case ESCALATE -> effect == Effect.ESCALATE;
      case HOLD -> effect != Effect.ALLOW && effect != Effect.ESCALATE;
    };
  }

  private static String said(String name) {
    return name.replace('-', ' ');
  }

  private static List<SignOffView.Claimed> claims(List<Proof> proofs) {
    Map<Claim.Kind, List<Proof>> kinds = new LinkedHashMap<>();
    proofs.forEach(p -> kinds.computeIfAbsent(p.claim().kind(), k -> new ArrayList<>()).add(p));
    return kinds.entrySet().stream()
        .map(
            e ->
                new SignOffView.Claimed(
                    e.getKey().promise(),
                    e.getValue().stream().filter(p -> p.verdict().proved()).count()
                        + " of "
                        + e.getValue().size()))
        .toList();
  }

  /** What the policy and the layers below it say is always or never so, each with its verdict. */
  private List<SignOffView.Stated> stated(List<Proof> proofs) {
    return proofs.stream().flatMap(p -> stated(p).stream()).toList();
  }

  private Optional<SignOffView.Stated> stated(Proof proof) {
    StatementWords words = new StatementWords(policy);
    return StatementWords.behind(policy, proof.claim())
        .map(
            s ->
                new SignOffView.Stated(
                    proof.claim().sentence(),
                    words.whole(s),
                    words.saidBy(s),
                    verdict(proof.verdict())));
  }

  private static String verdict(Verdict verdict) {
    if (verdict.proved()) {
      return "Proved";
    }
    return verdict instanceof Verdict.Refuted ? "Not so" : "Undecided";
  }

  private static Stream<String> notProved(Proof proof) {
    boolean refuted = proof.verdict() instanceof Verdict.Refuted;
    String shown =
        proof.verdict() instanceof Verdict.Refuted r
            ? String.join(" ", r.witness().words()) + " " + String.join(" ", r.witness().answers())
            : "The steps that it was given were spent.";
    return Stream.of(
        (refuted ? "Not so: " : "Undecided: ") + proof.claim().sentence() + " " + shown);
  }

  private static String remark(Diagnostic remark) {
    return remark.code().id() + ": " + remark.message();
  }

  private static Stream<String> accepted(Diagnostic remark) {
    return remark.acceptance().stream()
        .map(a -> remark(remark) + ". Accepted by " + a.by() + ": " + a.why());
  }

  /** Each card that reads otherwise than before, by its fingerprints. */
  private List<String> cards() {
    Cards now = new Cards(policy, files, today);
    Optional<Cards> before = earlier.map(e -> new Cards(e, files, today));
    Set<String> names = new LinkedHashSet<>(now.names());
    before.ifPresent(b -> names.addAll(b.names()));
    List<String> lines = new ArrayList<>();
    for (String name : names) {
      String was = before.map(b -> fingerprint(b, name)).orElse("none");
      String is = fingerprint(now, name);
      if (!was.equals(is)) {
        lines.add(said(name) + ": take down " + was + ", hang up " + is + ".");
      }
    }
    return lines;
  }

  private static String fingerprint(Cards cards, String name) {
    return cards.names().contains(name)
        ? cards.page(name).match(CardPage::fingerprint, no -> "none (it cannot be printed)")
        : "none";
  }

  private List<String> sources(Bibliography bibliography) {
    Set<String> ids = new TreeSet<>();
    policy.values().forEach(v -> ids.addAll(v.sources()));
    policy.bands().forEach(b -> ids.addAll(b.sources()));
    policy.barred().forEach(b -> ids.addAll(b.sources()));
    policy.terms().forEach(t -> ids.addAll(t.sources()));
    policy.questions().forEach(q -> q.rules().forEach(r -> ids.addAll(r.backing().sources())));
    policy.statements().forEach(s -> ids.addAll(s.backing().sources()));
    policy.care().lapses().forEach(l -> ids.addAll(l.backing().sources()));
    policy.care().fallbacks().forEach(f -> ids.addAll(f.backing().sources()));
    policy.care().trays().forEach(t -> ids.addAll(t.backing().sources()));
    Map<String, List<String>> publications = new LinkedHashMap<>();
    ids.forEach(
        id ->
            publications
                .computeIfAbsent(
                    bibliography.entry(id).map(Bibliography.Entry::publication).orElse(id),
                    p -> new ArrayList<>())
                .add(id));
    return publications.entrySet().stream()
        .map(e -> e.getKey() + " (" + String.join(", ", e.getValue()) + ")")
        .toList();
  }
}
