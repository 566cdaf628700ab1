package org.tidemark;

import java.util.List;
import java.util.Optional;
import org.tidemark.decide.Decider;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.EffectiveQuestion;
import org.tidemark.model.Header;
import org.tidemark.model.PolicyKind;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;
import org.tidemark.source.Suggestion;

/** Keeps what was not made for a bedside from answering there. */
final class Bedside {
  private Bedside() {}

  static Loaded<Decider> decider(EffectivePolicy policy, String question) {
    if (!policy.header().kind().servesBedside()) {
      return Loaded.broken(refused(policy.header()));
    }
    Optional<Decider> decider = Decider.of(policy, question);
    return decider.map(Loaded::good).orElseGet(() -> Loaded.broken(notAnswered(policy, question)));
  }

  private static Diagnostic refused(Header header) {
    boolean floor = header.kind() == PolicyKind.FLOOR;
    return Diagnostic.error(
            DiagnosticCode.NOT_FOR_THE_BEDSIDE,
            header.place().span(),
            "`"
                + header.name()
                + (floor
                    ? "` is a floor: hospitals build on it, and it answers nobody"
                    : "` is a reading of somebody's published page, for comparison only"))
        .help(
            "name your hospital's own policy; to write one, build on "
                + (floor ? "`" + header.name() + "`" : "a floor")
                + " (see the list of policies)");
  }

  private static Diagnostic notAnswered(EffectivePolicy policy, String question) {
    List<String> may = policy.questions().stream().map(EffectiveQuestion::name).toList();
    SourceText typed = SourceText.of("question", question);
    return Diagnostic.error(
            DiagnosticCode.UNKNOWN_QUESTION,
            new Span(typed, 0, question.length()),
            "`" + policy.name() + "` does not answer the question `" + question + "`")
        .help(
            Suggestion.nearest(question, may)
                .map(near -> "did you mean `" + near + "`?")
                .orElse("ask one of: " + String.join(", ", may)));
  }
}
