package org.tidemark.load;

import java.util.Optional;
import org.tidemark.model.Header;
import org.tidemark.model.Status;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.yaml.YamlNode;

/** Reads what was changed since the edition before; every edition after the first says it. */
final class ChangeReader {
  private final Optional<Integer> edition;
  private final Status status;
  private final Problems problems;

  ChangeReader(Optional<Integer> edition, Status status, Problems problems) {
    this.edition = edition;
    this.status = status;
    this.problems = problems;
  }

  Optional<Header.Changed> read(Fields fields) {
    edition
        .filter(e -> e > 1 && !fields.has("changed"))
        .ifPresent(e -> noChangeNote(fields.key("edition"), e));
    return fields.optional("changed").flatMap(node -> change(node, fields.key("edition")));
  }

  private Optional<Header.Changed> change(YamlNode node, Span at) {
    Fields change = Fields.of(node, "`changed`", problems);
    change
        .requiredText("from")
        .ifPresent(
            t ->
                Scalars.count(t, problems)
                    .flatMap(from -> edition.filter(e -> from >= e))
                    .ifPresent(e -> notHigher(t, at, e)));
    String why = change.text("why").value();
    Optional<Header.Size> size = change.requiredWord("size", Header.Size.class);
    change.done();
    return size.map(s -> new Header.Changed(why, s));
  }

  private void noChangeNote(Span at, int number) {
    String message = "edition " + number + " does not say what was changed and why";
    Diagnostic said =
        status == Status.APPROVED
            ? Diagnostic.error(DiagnosticCode.NO_CHANGE_NOTE, at, message)
            : Diagnostic.warning(DiagnosticCode.NO_CHANGE_NOTE, at, message);
    problems.add(
        said.help(
            "add changed: {from: "
                + (number - 1)
                + ", why: \"...\", size: minor}, or size: retrain"));
  }

  private void notHigher(Located<String> from, Span at, int number) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.EDITION_NOT_HIGHER,
                from.span(),
                "edition "
                    + number
                    + " is not above edition "
                    + from.value()
                    + ", which it changed")
            .and(at, "the edition stands here")
            .help("count the edition up by one at each change"));
  }
}
