package org.tidemark.load;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Condition;
import org.tidemark.model.Control;
import org.tidemark.model.Finding;
import org.tidemark.model.Header;
import org.tidemark.model.Option;
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
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;

/** Reads what a policy is, who owns it, whom it is for and where it stands. */
final class HeaderReader {
  private static final Set<String> NOT_SCOPE = Set.of("see", "source");

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
    Scope scope =
        new Scope(
            open ? List.of() : covers(fields),
            fields.list("not-for", this::exclusion),
            !open,
            Place.at(fields.key("for")));
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
            Acceptances.read(fields, problems), new PlanReader(problems).read(fields, kind)),
        Place.at(name.span()));
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

  private List<Condition.Options> covers(Fields fields) {
    Optional<YamlNode> node = fields.required("for");
    return node.map(n -> scopeTests(Fields.of(n, "`for`", problems), Set.of())).orElse(List.of());
  }

  private Scope.Exclusion exclusion(YamlNode node) {
    Fields fields = Fields.of(node, "an exclusion", problems);
    Optional<String> see =
        fields.optionalText("see").map(Located::value).filter(v -> !v.equals("not-stated"));
    List<String> sources = citations.read(fields, "source");
    List<Condition.Options> tests = scopeTests(fields, NOT_SCOPE);
    if (node instanceof YamlMap map && named(map) != 1) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_SHAPE, node.span(), "an exclusion names one finding")
              .help("write for example {place: critical-care, see: name-of-its-policy}"));
    }
    return new Scope.Exclusion(
        tests.isEmpty() ? new Condition.Options("", Set.of()) : tests.get(0),
        see,
        sources,
        Place.at(node.span()));
  }

  private static long named(YamlMap exclusion) {
    return exclusion.entries().stream().filter(e -> !NOT_SCOPE.contains(e.key().text())).count();
  }

  private List<Condition.Options> scopeTests(Fields fields, Set<String> others) {
    List<Condition.Options> tests = new ArrayList<>();
    for (YamlMap.Entry entry : fields.entries()) {
      if (!others.contains(entry.key().text())) {
        scopeTest(fields, entry).ifPresent(tests::add);
      }
    }
    return tests;
  }

  private Optional<Condition.Options> scopeTest(Fields fields, YamlMap.Entry entry) {
    Optional<Finding> finding = vocabulary.finding(entry.key().text());
    if (finding.isEmpty()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_FINDING,
                  entry.key().span(),
                  "no finding is called `" + entry.key().text() + "`")
              .help(Fields.suggest(entry.key().text(), vocabulary.names())));
      return Optional.empty();
    }
    List<String> may = finding.get().domain().options().stream().map(Option::name).toList();
    Set<String> options = new LinkedHashSet<>();
    for (Located<String> text : fields.some(entry)) {
      if (!may.contains(text.value())) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.UNKNOWN_OPTION,
                    text.span(),
                    "`" + entry.key().text() + "` cannot be `" + text.value() + "`")
                .help(Fields.suggest(text.value(), may)));
      }
      options.add(text.value());
    }
    return Optional.of(new Condition.Options(entry.key().text(), options));
  }
}
