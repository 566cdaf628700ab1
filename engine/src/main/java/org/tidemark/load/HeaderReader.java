package org.tidemark.load;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.tidemark.model.AlertAnswer;
import org.tidemark.model.Control;
import org.tidemark.model.Header;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.Scope;
import org.tidemark.model.Status;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.source.Suggestion;
import org.tidemark.source.Typed;
import org.tidemark.yaml.YamlNode;

/** Reads what a policy is, who owns it, whom it is for and where it stands. */
final class HeaderReader {
  private final Vocabulary vocabulary;
  private final Citations citations;
  private final Problems problems;

  HeaderReader(Vocabulary vocabulary, Citations citations, Problems problems) {
    this.vocabulary = vocabulary;
    this.citations = citations;
    this.problems = problems;
  }

  Header read(Fields fields) {
    Located<String> name = fields.text("policy");
    new Names("policy", problems).give(name.value(), name.span());
    PolicyKind kind = fields.requiredWord("kind", PolicyKind.class).orElse(PolicyKind.HOSPITAL);
    wordsFrom(fields);
    Status status = fields.requiredWord("status", Status.class).orElse(Status.DRAFT);
    Optional<Header.Approval> approval = approval(fields, status);
    Optional<Located<String>> reviewText =
        fields.optionalText("review-by").filter(t -> !t.value().equals("not-stated"));
    Optional<LocalDate> review = reviewText.flatMap(t -> Scalars.date(t, problems));
    inOrder(approval, review, reviewText, fields.key("approved"));
    fields.has("for");
    boolean open = status == Status.DRAFT && fields.leftOpen("for");
    Scope scope = new ScopeReader(vocabulary, problems).read(fields, citations, open);
    if (status == Status.DRAFT && kind.servesBedside()) {
      List.of("title", "owner", "approved", "review-by", "fallback", "retest")
          .forEach(fields::leftOpen);
    }
    Optional<String> buildsOn =
        fields.optionalText("builds-on").map(Located::value).filter(v -> !v.equals("nothing"));
    Optional<Integer> counted =
        fields.requiredText("edition").flatMap(t -> Scalars.count(t, problems));
    Optional<Header.Changed> changed = new ChangeReader(counted, status, problems).read(fields);
    return new Header(
        name.value(),
        kind,
        fields.text("title").value(),
        fields.text("owner").value(),
        counted.orElse(1),
        status,
        approval,
        review,
        scope,
        buildsOn,
        changed,
        clock(fields),
        new Control(
            Acceptances.read(fields, problems),
            new PlanReader(problems).read(fields, kind),
            alerts(fields)),
        Place.at(name.span()));
  }

  private List<AlertAnswer> alerts(Fields policy) {
    return policy.list("alerts", this::alert);
  }

  private AlertAnswer alert(YamlNode node) {
    Fields fields = Fields.of(node, "an alert", problems);
    fields.required("alert");
    List<String> ids = citations.read(fields, "alert");
    List<Located<String>> by = fields.someTexts("answered-by");
    fields.done();
    return new AlertAnswer(ids.stream().findFirst().orElse(""), by);
  }

  /** A place of the time zone database; an offset alone knows no summer time. */
  private Optional<ZoneId> clock(Fields fields) {
    Optional<Located<String>> text = fields.optionalText("clock");
    text.filter(t -> !isPlace(t.value())).ifPresent(this::noSuchClock);
    return text.map(Located::value).filter(HeaderReader::isPlace).map(ZoneId::of);
  }

  private static boolean isPlace(String name) {
    return name.contains("/") && ZoneId.getAvailableZoneIds().contains(name);
  }

  private void noSuchClock(Located<String> text) {
    List<String> places =
        ZoneId.getAvailableZoneIds().stream().filter(HeaderReader::isPlace).sorted().toList();
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_CLOCK,
                text.span(),
                "the time zone database has no place called " + Typed.shown(text.value()))
            .help(
                Suggestion.nearest(text.value(), places)
                    .map(near -> "did you mean `" + near + "`?")
                    .orElse("write a place such as Europe/London")));
  }

  private void wordsFrom(Fields fields) {
    Optional<YamlNode> node = fields.required("words-from");
    if (node.isEmpty()) {
      return;
    }
    Fields words = Fields.of(node.get(), "`words-from`", problems);
    Optional<Located<String>> name = words.requiredText("vocabulary");
    Optional<Located<String>> edition = words.requiredText("edition");
    words.done();
    name.filter(n -> !n.value().equals(vocabulary.name()))
        .ifPresent(n -> wrongVocabulary(n, vocabulary.name()));
    edition
        .filter(e -> !e.value().equals(Integer.toString(vocabulary.edition())))
        .ifPresent(e -> wrongVocabulary(e, Integer.toString(vocabulary.edition())));
  }

  private void wrongVocabulary(Located<String> typed, String have) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_WORD,
                typed.span(),
                "the vocabulary at hand is not `" + typed.value() + "`")
            .help("write " + have + ", and check the policy's words against that vocabulary"));
  }

  private Optional<Header.Approval> approval(Fields fields, Status status) {
    if (status == Status.APPROVED) {
      fields.required("approved");
    }
    Optional<YamlNode> node = fields.optional("approved");
    if (node.isEmpty() || Fields.isNotStated(node.get())) {
      return Optional.empty();
    }
    Fields approved = Fields.of(node.get(), "`approved`", problems);
    Optional<LocalDate> on = approved.requiredText("on").flatMap(t -> Scalars.date(t, problems));
    String by = approved.text("by").value();
    String reference = approved.text("reference").value();
    approved.done();
    return on.map(day -> new Header.Approval(day, by, reference));
  }

  private void inOrder(
      Optional<Header.Approval> approval,
      Optional<LocalDate> review,
      Optional<Located<String>> at,
      Span approved) {
    if (approval.isPresent()
        && review.isPresent()
        && at.isPresent()
        && !approval.get().on().isBefore(review.get())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.DATES_OUT_OF_ORDER,
                  at.get().span(),
                  "the review date is not after the approval on " + approval.get().on())
              .and(approved, "the approval stands here")
              .help("correct one of the two dates"));
    }
  }
}
