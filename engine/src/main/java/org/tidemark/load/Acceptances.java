package org.tidemark.load;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tidemark.model.Acceptance;
import org.tidemark.model.Header;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.source.Severity;
import org.tidemark.source.Typed;
import org.tidemark.yaml.YamlNode;

/**
 * Warnings that the owners of a policy let stand, each with a reason. What is accepted is set apart
 * and never hidden; an acceptance that fits nothing, or more than one warning, is an error, so that
 * no new warning can slip in under an old reason.
 */
public final class Acceptances {
  static final String KEY = "accepted-warnings";
  private static final int SHOWN = 5;
  private static final Set<DiagnosticCode> SIDE_BY_SIDE =
      EnumSet.of(
          DiagnosticCode.SCOPES_OVERLAP, DiagnosticCode.COPIED_LIMIT, DiagnosticCode.NO_WAY_ON);

  private Acceptances() {}

  static List<Acceptance> read(Fields policy, Problems problems) {
    return policy.list(KEY, node -> one(node, problems)).stream()
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Acceptance> one(YamlNode node, Problems problems) {
    Fields fields = Fields.of(node, "an accepted warning", problems);
    Optional<Located<String>> code = fields.requiredText("warning");
    Optional<Located<String>> where = fields.requiredText("where");
    Optional<String> says = fields.optionalText("says").map(Located::value);
    Optional<Located<String>> why = fields.requiredText("why");
    Optional<Located<String>> by = fields.requiredText("by");
    fields.done();
    Optional<DiagnosticCode> known = code.flatMap(c -> code(c, fields));
    return known.isEmpty() || where.isEmpty() || why.isEmpty() || by.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Acceptance(
                known.get(),
                where.get().value(),
                says,
                why.get().value(),
                by.get().value(),
                Place.at(code.orElseThrow().span())));
  }

  private static Optional<DiagnosticCode> code(Located<String> typed, Fields fields) {
    Optional<DiagnosticCode> found =
        Arrays.stream(DiagnosticCode.values())
            .filter(c -> c.id().equals(typed.value()))
            .findFirst();
    if (found.isEmpty()) {
      fields.unknownWord(
          typed,
          Arrays.stream(DiagnosticCode.values()).map(DiagnosticCode::id).toList(),
          "`warning`");
    }
    return found;
  }

  /** Says of each acceptance that fits an error that errors are not accepted. */
  public static void refuseErrors(List<Acceptance> accepted, Problems problems) {
    List<Diagnostic> errors =
        problems.sorted().stream().filter(d -> d.severity() == Severity.ERROR).toList();
    for (Acceptance acceptance : accepted) {
      errors.stream()
          .filter(acceptance::fits)
          .findFirst()
          .ifPresent(error -> problems.add(anError(acceptance, error)));
    }
  }

  private static Diagnostic anError(Acceptance acceptance, Diagnostic error) {
    return Diagnostic.error(
            DiagnosticCode.ACCEPTS_AN_ERROR,
            acceptance.place().span(),
            "`" + acceptance.warning().id() + "` is an error here, and an error cannot be accepted")
        .and(error.at(), error.message())
        .help("mend it, and delete this acceptance");
  }

  /**
   * Marks the remarks that a policy's layers have accepted.
   *
   * @param layers the headers, the lowest first; only what the top one accepts has to fit
   * @param whole the policy with all its remarks
   */
  public static <T> Loaded<T> settle(List<Header> layers, Loaded<T> whole) {
    return whole.match(
        value -> {
          Problems problems = new Problems();
          marked(layers, whole.diagnostics(), problems).forEach(problems::add);
          return problems.conclude(() -> value);
        },
        broken -> whole);
  }

  /**
   * Marks what was accepted of the remarks that only show when policies lie side by side. What is
   * accepted of these need not fit when a policy is read alone.
   */
  public static List<Diagnostic> mark(List<Header> policies, List<Diagnostic> remarks) {
    return remarks.stream()
        .map(
            remark ->
                policies.stream()
                    .flatMap(p -> p.control().accepted().stream())
                    .filter(a -> isIn(a, remark) && a.fits(remark))
                    .findFirst()
                    .map(a -> remark.accepted(a.why(), a.by()))
                    .orElse(remark))
        .toList();
  }

  private static boolean isIn(Acceptance acceptance, Diagnostic remark) {
    return acceptance.place().span().source().name().equals(remark.at().source().name());
  }

  private static List<Diagnostic> marked(
      List<Header> layers, List<Diagnostic> remarks, Problems problems) {
    List<Diagnostic> left = new ArrayList<>(remarks);
    List<Diagnostic> marked = new ArrayList<>();
    for (int i = layers.size() - 1; i >= 0; i--) {
      boolean top = i == layers.size() - 1;
      for (Acceptance acceptance : layers.get(i).control().accepted()) {
        List<Diagnostic> fits = left.stream().filter(acceptance::fits).toList();
        if (fits.size() == 1) {
          left.remove(fits.get(0));
          marked.add(fits.get(0).accepted(acceptance.why(), acceptance.by()));
        } else if (top && !(fits.isEmpty() && SIDE_BY_SIDE.contains(acceptance.warning()))) {
          problems.add(fits.isEmpty() ? nothing(acceptance, left) : several(acceptance, fits));
        }
      }
    }
    marked.addAll(left);
    return marked;
  }

  private static Diagnostic nothing(Acceptance acceptance, List<Diagnostic> left) {
    String said =
        "no warning `"
            + acceptance.warning().id()
            + "` stands at "
            + Typed.shown(acceptance.where())
            + acceptance.says().map(part -> " and says " + Typed.shown(part)).orElse("");
    String open =
        left.stream()
            .limit(SHOWN)
            .map(d -> d.code().id() + " at " + Typed.shown(d.at().text()))
            .collect(Collectors.joining("; "));
    return Diagnostic.error(DiagnosticCode.ACCEPTS_NOTHING, acceptance.place().span(), said)
        .help(
            open.isEmpty()
                ? "this policy has no other warning; delete this"
                : "delete this, or correct it; not accepted yet: " + open);
  }

  private static Diagnostic several(Acceptance acceptance, List<Diagnostic> fits) {
    return Diagnostic.error(
            DiagnosticCode.ACCEPTS_SEVERAL,
            acceptance.place().span(),
            fits.size()
                + " warnings `"
                + acceptance.warning().id()
                + "` stand at "
                + Typed.shown(acceptance.where())
                + ", and one reason is given")
        .and(fits.get(0).at(), fits.get(0).message())
        .and(fits.get(1).at(), fits.get(1).message())
        .help("add `says` with some words of the one that is meant, and accept each by itself");
  }
}
