package org.tidemark.load;

import java.util.List;
import java.util.Optional;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Standing;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;

/** Reads the bibliography that every citation resolves into. */
public final class BibliographyLoader {
  private BibliographyLoader() {}

  public static Loaded<Bibliography> load(YamlNode root) {
    Problems problems = new Problems();
    Fields fields = Fields.of(root, "a bibliography", problems);
    fields.text("bibliography");
    fields.requiredText("edition").ifPresent(t -> Scalars.count(t, problems));
    fields.required("facts");
    List<Bibliography.Entry> entries = fields.named("facts", entry -> entry(entry, problems));
    List<Located<String>> alerts = fields.texts("alerts");
    alerts.forEach(a -> known(a, entries, problems));
    fields.done();
    List<String> ids = alerts.stream().map(Located::value).toList();
    return problems.conclude(() -> new Bibliography(entries, ids));
  }

  private static void known(
      Located<String> alert, List<Bibliography.Entry> entries, Problems problems) {
    if (entries.stream().noneMatch(e -> e.id().equals(alert.value()))) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_CITATION,
                  alert.span(),
                  "the bibliography has no `" + alert.value() + "`")
              .help("write an entry of that name under `facts`"));
    }
  }

  private static Bibliography.Entry entry(YamlMap.Entry entry, Problems problems) {
    Fields fields = Fields.of(entry.value(), "the entry `" + entry.key().text() + "`", problems);
    String says = fields.text("says").value();
    fields.optionalText("value");
    fields.optionalText("for");
    String publication = fields.text("publication").value();
    Optional<String> year = fields.optionalText("year").map(Located::value);
    Standing standing =
        fields.requiredWord("standing", Standing.class).orElse(Standing.FROM_MEMORY);
    Optional<String> note = fields.optionalText("note").map(Located::value);
    fields.done();
    return new Bibliography.Entry(
        entry.key().text(), says, publication, year, standing, note, Place.at(entry.key().span()));
  }
}
