package org.tidemark.load;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidemark.model.Barred;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Care;
import org.tidemark.model.Counts;
import org.tidemark.model.Declared;
import org.tidemark.model.Departure;
import org.tidemark.model.Finding;
import org.tidemark.model.Header;
import org.tidemark.model.NamedBand;
import org.tidemark.model.Policy;
import org.tidemark.model.PolicyKind;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Question;
import org.tidemark.model.Statement;
import org.tidemark.model.Term;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlNode;

/**
 * Reads one policy file. Names are looked up in the vocabulary, in the file itself and in the
 * layers below it.
 */
public final class PolicyLoader {
  private final Vocabulary vocabulary;
  private final Optional<Bibliography> bibliography;

  public PolicyLoader(Vocabulary vocabulary, Bibliography bibliography) {
    this(vocabulary, Optional.of(bibliography));
  }

  private PolicyLoader(Vocabulary vocabulary, Optional<Bibliography> bibliography) {
    this.vocabulary = vocabulary;
    this.bibliography = bibliography;
  }

  /**
   * Reads policies whose citations were looked up before, as those of a shipped policy are by the
   * tests that it is shipped with. Everything else is checked as ever.
   */
  public static PolicyLoader ofChecked(Vocabulary vocabulary) {
    return new PolicyLoader(vocabulary, Optional.empty());
  }

  /** The name that a file gives its policy, if it gives one. */
  public static Optional<Located<String>> named(YamlNode root) {
    return Fields.of(root, "a policy", new Problems()).optionalText("policy");
  }

  /**
   * The name of the policy that a file builds on, so that it can be read first; empty if it builds
   * on nothing.
   */
  public static Optional<Located<String>> buildsOn(YamlNode root) {
    Fields fields = Fields.of(root, "a policy", new Problems());
    return fields.optionalText("builds-on").filter(name -> !name.value().equals("nothing"));
  }

  /**
   * Reads a policy.
   *
   * @param root the file
   * @param below the policies that it builds on, the lowest first
   */
  public Loaded<Policy> load(YamlNode root, List<Policy> below) {
    Problems problems = new Problems();
    Fields fields = Fields.of(root, "a policy", problems);
    if (!new SizeChecks(PolicyLimits.DEFAULT, problems).passes(fields)) {
      return Loaded.broken(problems.sorted());
    }
    EmptyLists.check(root, "policy", problems);
    Citations citations = new Citations(bibliography, problems);
    Header header = new HeaderReader(vocabulary, citations, problems).read(fields);
    Backings backings = new Backings(header.kind(), citations);
    OwnFindingsReader ownReader = new OwnFindingsReader(vocabulary, below, problems);
    List<Finding> own = ownReader.read(fields);
    Known known = new Known(ownReader.whole(), below);
    List<PolicyValue> values = new ValuesReader(known, backings, problems).read(fields);
    List<NamedBand> bands = new BandsReader(known, citations, problems).read(fields);
    List<Barred> barred = barred(fields, backings, known.vocabulary(), problems);
    List<Term> terms = new TermsReader(known, backings, problems).read(fields);
    Wording wording = new Wording(known, problems);
    CareReader careReader = new CareReader(header.name(), known, wording, backings, problems);
    Care care = careReader.read(fields);
    boolean asks = header.kind() != PolicyKind.PLAN || fields.has("questions");
    QuestionsReader reader = new QuestionsReader(header.name(), known, wording, backings, problems);
    List<Question> questions = asks ? reader.read(fields) : List.of();
    Counts counts =
        new CountsReader(
                header.name(), vocabulary, below, values, bands, wording, backings, problems)
            .read(fields);
    List<Statement> statements =
        new StatementsReader(header.name(), known, wording, backings, problems)
            .read(fields, asked(questions, below));
    List<Departure> departures = new DeparturesReader(header, citations, problems).read(fields);
    List<String> open = fields.texts("not-stated").stream().map(Located::value).toList();
    List<ProseTexts.Prose> prose = ProseTexts.in(root);
    new ProseChecks(known.numbers(), fields.texts(ProseChecks.KEY), problems).check(prose);
    barred.forEach(known::learn);
    new NeverWords(known.barred(), problems).check(prose);
    new UnusedNames(header.kind(), belowNames(below), problems).check(fields);
    fields.done();
    Acceptances.refuseErrors(header.control().accepted(), problems);
    return problems.conclude(
        () ->
            new Policy(
                header,
                values,
                bands,
                barred,
                terms,
                questions,
                care,
                counts,
                open,
                new Declared(statements, departures),
                own));
  }

  private static Set<String> asked(List<Question> own, List<Policy> below) {
    Set<String> names = new TreeSet<>();
    own.forEach(q -> names.add(q.name()));
    below.forEach(p -> p.questions().forEach(q -> names.add(q.name())));
    return names;
  }

  private static Set<String> belowNames(List<Policy> below) {
    Set<String> names = new HashSet<>();
    for (Policy policy : below) {
      policy.values().forEach(v -> names.add(v.name()));
      policy.bands().forEach(b -> names.add(b.name()));
      policy.terms().forEach(t -> names.add(t.name()));
      policy.care().contacts().forEach(c -> names.add(c.name()));
    }
    return names;
  }

  private static List<Barred> barred(
      Fields policy, Backings backings, Vocabulary vocabulary, Problems problems) {
    List<Barred> all = new ArrayList<>();
    Names names = new Names("barred test", problems);
    policy.list(
        "barred",
        node -> {
          Fields fields = Fields.of(node, "a barred test", problems);
          List<Located<String>> tests = fields.someTexts("tests");
          List<String> sources = backings.read(fields).sources();
          fields.done();
          tests.forEach(test -> names.give(test.value(), test.span()));
          tests.forEach(
              test -> barredTest(test, sources, vocabulary, problems).ifPresent(all::add));
          return node;
        });
    return all;
  }

  private static Optional<Barred> barredTest(
      Located<String> test, List<String> sources, Vocabulary vocabulary, Problems problems) {
    Optional<Barred> known = vocabulary.finding(test.value()).flatMap(Finding::barred);
    if (known.isEmpty()) {
      List<String> may =
          vocabulary.findings().stream()
              .filter(f -> f.barred().isPresent())
              .map(Finding::name)
              .toList();
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_FINDING,
                  test.span(),
                  "`" + test.value() + "` is not a test that the vocabulary can bar")
              .help(Fields.suggest(test.value(), may)));
    }
    return known.map(b -> new Barred(b.finding(), b.options(), b.because(), b.words(), sources));
  }
}
