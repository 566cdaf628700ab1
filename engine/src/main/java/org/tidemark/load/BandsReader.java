package org.tidemark.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.model.Band;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.NamedBand;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Place;
import org.tidemark.source.Problems;
import org.tidemark.yaml.YamlMap;

/** Reads the named stretches of measures. */
final class BandsReader {
  private final Known known;
  private final Citations citations;
  private final Problems problems;
  private final Names names;
  private final List<Related> related = new ArrayList<>();

  BandsReader(Known known, Citations citations, Problems problems) {
    this.known = known;
    this.citations = citations;
    this.problems = problems;
    this.names = new Names("band", problems);
  }

  List<NamedBand> read(Fields policy) {
    List<NamedBand> bands = policy.named("bands", this::band);
    bands.forEach(known::learn);
    related.forEach(this::relationIsKnown);
    return bands;
  }

  private NamedBand band(YamlMap.Entry entry) {
    String name = entry.key().text();
    names.give(name, entry.key().span());
    Fields fields = Fields.of(entry.value(), "the band `" + name + "`", problems);
    Located<String> of = fields.text("of");
    Optional<Finding> finding = known.vocabulary().finding(of.value());
    Band band = new Band(Optional.empty(), Optional.empty());
    if (finding.isPresent() && finding.get().domain() instanceof Domain.Measure measure) {
      band = new Bounds(known, problems).read(fields, finding.get(), measure);
    } else {
      notAMeasure(of);
    }
    Optional<NamedBand.Relation> relation = relation(fields, of.value());
    Optional<String> notStated = fields.optionalText("not-stated").map(Located::value);
    List<String> sources = citations.read(fields, "source");
    Bounds.KEYS.forEach(fields::has);
    fields.done();
    return new NamedBand(
        name,
        of.value(),
        band,
        notStated,
        relation,
        sources,
        Place.at(entry.key().span().to(entry.value().span())));
  }

  private void notAMeasure(Located<String> of) {
    List<String> measures =
        known.vocabulary().findings().stream()
            .filter(f -> f.domain() instanceof Domain.Measure)
            .map(Finding::name)
            .toList();
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_FINDING,
                of.span(),
                "no measure is called `" + of.value() + "`")
            .help(Fields.suggest(of.value(), measures)));
  }

  /** A band that another one names, to be looked up when all of them are known. */
  private record Related(String of, Located<String> other) {}

  private Optional<NamedBand.Relation> relation(Fields fields, String of) {
    Optional<NamedBand.Relation> inside = relation(fields, of, "inside", NamedBand.Kind.INSIDE);
    Optional<NamedBand.Relation> straddles =
        relation(fields, of, "straddles", NamedBand.Kind.STRADDLES);
    if (inside.isPresent() && straddles.isPresent()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.CANNOT_HOLD,
                  fields.key("straddles"),
                  "`inside` and `straddles` stand side by side")
              .help("keep the one that is meant"));
    }
    return inside.or(() -> straddles);
  }

  private Optional<NamedBand.Relation> relation(
      Fields fields, String of, String key, NamedBand.Kind kind) {
    Optional<Located<String>> other = fields.optionalText(key);
    other.ifPresent(o -> related.add(new Related(of, o)));
    return other.map(o -> new NamedBand.Relation(kind, o.value()));
  }

  private void relationIsKnown(Related related) {
    String other = related.other().value();
    if (!known.bandOf(other, related.of())) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.UNKNOWN_BAND,
                  related.other().span(),
                  "no band of `" + related.of() + "` is called `" + other + "`")
              .help(Fields.suggest(other, known.bandsOf(related.of()))));
    }
  }
}
