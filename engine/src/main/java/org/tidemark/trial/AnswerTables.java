package org.tidemark.trial;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.tidemark.decide.CompiledQuestion;
import org.tidemark.decide.Decider;
import org.tidemark.decide.Decision;
import org.tidemark.decide.FindingWords;
import org.tidemark.decide.Need;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.load.VocabularyFile;
import org.tidemark.model.Condition;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Option;
import org.tidemark.model.Seen;
import org.tidemark.model.Vocabulary;

/**
 * Tables for those who approve a policy: what it answers at each of its limits and one step to
 * either side, at first and at later uses. Whatever a table does not vary is as it usually is; what
 * is still open after that is varied too, so that no cell of a table hides a question.
 */
public final class AnswerTables {
  private static final String POPULATION = "population";
  private static final String OCCASION = "occasion";

  private final EffectivePolicy policy;
  private final Vocabulary vocabulary;
  private final CompiledQuestion question;
  private final Decider decider;
  private final UsualCase usually;
  private final Findings given;
  private final LocalDate day;

  /**
   * The tables of one question.
   *
   * @param policy the policy
   * @param question the question's name; the policy must answer it
   * @param words what findings usually are
   * @param given what is so whenever the question is asked, whatever is usual
   * @param day the day, for the review date
   */
  public AnswerTables(
      EffectivePolicy policy,
      String question,
      VocabularyFile words,
      Findings given,
      LocalDate day) {
    this.policy = policy;
    this.vocabulary = policy.vocabulary();
    this.question = CompiledQuestion.of(policy, policy.question(question).orElseThrow());
    this.decider = Decider.of(policy, question).orElseThrow();
    this.usually = new UsualCase(policy, words.usual());
    this.given = given;
    this.day = day;
  }

  /** Some findings, in words. */
  private record Part(String words, boolean limit, Findings findings) {
    Part and(String more, Finding finding, Option option) {
      Findings both = UsualCase.with(findings, finding, Seen.option(option.name()));
      return new Part(words + more, limit, both);
    }
  }

  /** One table a population and measure that the question sets limits to. */
  public List<AnswerTable> atLimits() {
    List<AnswerTable> tables = new ArrayList<>();
    Limits limits = new Limits(question);
    for (Finding finding : vocabulary.findings()) {
      if (finding.domain() instanceof Domain.Measure measure) {
        SortedMap<BigDecimal, Boolean> near = limits.of(finding, measure);
        if (!near.isEmpty()) {
          tables.addAll(tables(finding, finding.asks(), readings(finding, measure, near)));
        }
      }
    }
    return tables;
  }

  /**
   * One table a population, with a row for each option of a finding.
   *
   * @param finding the finding
   * @param heading what is varied, in words
   * @param given what else is so
   */
  public List<AnswerTable> options(Finding finding, String heading, Findings given) {
    return tables(finding, heading, options(finding, given));
  }

  private static List<Part> options(Finding finding, Findings given) {
    Part nothing = new Part("", false, given);
    return finding.domain().options().stream()
        .map(o -> nothing.and(o.label(), finding, o))
        .toList();
  }

  /** Those at and beside the limits, the two ends of the scale, and what stands for a number. */
  private List<Part> readings(
      Finding finding, Domain.Measure measure, SortedMap<BigDecimal, Boolean> near) {
    SortedMap<BigDecimal, Boolean> all = new TreeMap<>(near);
    all.putIfAbsent(measure.lowest(), false);
    all.putIfAbsent(measure.highest(), false);
    List<Part> rows = new ArrayList<>();
    all.forEach(
        (number, limit) -> {
          Findings read = UsualCase.with(Findings.NONE, finding, Seen.number(number));
          rows.add(new Part(reading(finding, measure, number, read), limit, read));
        });
    rows.addAll(options(finding, Findings.NONE));
    return rows;
  }

  private String reading(
      Finding finding, Domain.Measure measure, BigDecimal number, Findings read) {
    String words = measure.print(number) + " " + measure.unit();
    Findings counted = decider.counted(read);
    return counted.equals(read)
        ? words
        : counted
            .entry(finding.name())
            .map(e -> words + ", counts as " + FindingWords.of(finding, e.seen()))
            .orElse(words);
  }

  private List<AnswerTable> tables(Finding finding, String heading, List<Part> rows) {
    List<Part> columns = columns(finding);
    List<AnswerTable> tables = new ArrayList<>();
    for (Part who : populations()) {
      tables.add(
          new AnswerTable(
              question.question().name(),
              heading,
              who.words(),
              columns.stream().map(Part::words).toList(),
              rows.stream().flatMap(r -> rows(finding, who, r, columns).stream()).toList()));
    }
    return tables;
  }

  /**
   * The row; where one and the same finding is all that is open in a column, a row for each of its
   * options.
   */
  private List<AnswerTable.Row> rows(Finding finding, Part who, Part row, List<Part> columns) {
    List<Optional<Decision>> answers = answers(finding, who, row, columns);
    Set<String> open = new LinkedHashSet<>();
    answers.forEach(a -> a.filter(AnswerTables::oneIsOpen).ifPresent(d -> add(d.ask(), open)));
    if (open.size() != 1) {
      return List.of(new AnswerTable.Row(row.words(), row.limit(), answers));
    }
    Finding left = vocabulary.require(open.iterator().next());
    return left.domain().options().stream()
        .map(o -> row.and(". " + left.asks() + " " + o.label(), left, o))
        .map(r -> new AnswerTable.Row(r.words(), r.limit(), answers(finding, who, r, columns)))
        .toList();
  }

  /** What was read and may be off stays open as it is. */
  private static boolean oneIsOpen(Decision decision) {
    return decision.ask().size() == 1 && decision.countsAs(decision.ask().get(0)).isEmpty();
  }

  private static void add(List<Need> needs, Set<String> open) {
    needs.forEach(need -> open.add(need.finding()));
  }

  private List<Optional<Decision>> answers(
      Finding finding, Part who, Part row, List<Part> columns) {
    List<Optional<Decision>> answers = new ArrayList<>();
    for (Part column : columns) {
      Findings entered = UsualCase.with(row.findings(), who.findings());
      Findings whole = usually.of(UsualCase.with(entered, column.findings()), finding.place());
      answers.add(
          exists(finding, whole) ? Optional.of(decider.decide(whole, day)) : Optional.empty());
    }
    return answers;
  }

  private static boolean exists(Finding finding, Findings whole) {
    return finding.applies().stream().allMatch(p -> holds(p, whole));
  }

  private static boolean holds(Condition.Options condition, Findings whole) {
    return whole
        .entry(condition.finding())
        .map(e -> condition.options().containsAll(e.seen().options()))
        .orElse(true);
  }

  /** The occasions, where the question looks at them and the finding can be seen at them. */
  private List<Part> columns(Finding finding) {
    if (question.space().position(OCCASION).isEmpty()) {
      return List.of(new Part("Answer", false, Findings.NONE));
    }
    Finding occasion = vocabulary.require(OCCASION);
    return options(occasion, Findings.NONE).stream()
        .filter(
            o ->
                finding.applies().stream()
                    .filter(p -> p.finding().equals(OCCASION))
                    .allMatch(p -> holds(p, o.findings())))
        .toList();
  }

  /** Each population that the policy is for, at the first place that it names. */
  private List<Part> populations() {
    Finding population = vocabulary.require(POPULATION);
    List<Condition.Options> covers = policy.header().scope().covers();
    Findings rest = given;
    for (Condition.Options cover : covers) {
      if (!cover.finding().equals(POPULATION)) {
        rest = UsualCase.with(rest, vocabulary.require(cover.finding()), usually.holds(cover));
      }
    }
    return options(population, rest).stream()
        .filter(
            o ->
                covers.stream()
                    .filter(c -> c.finding().equals(POPULATION))
                    .allMatch(c -> holds(c, o.findings())))
        .toList();
  }
}
