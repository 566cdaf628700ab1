package org.tidemark.load;

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

  BandsReader(Known known, Citations citations, Problems problems) {
    this.known = known;
    this.citations = citations;
    this.problems = problems;
    this.names = new Names("band", problems);
  }

  List<NamedBand> read(Fields policy) {
    List<NamedBand> bands = policy.named("bands", this::band);
    bands.forEach(known::learn);
    bands.forEach(this::relationIsKnown);
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
    Optional<NamedBand.Relation> relation = relation(fields);
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

  private Optional<NamedBand.Relation> relation(Fields fields) {
    Optional<NamedBand.Relation> inside =
        fields
            .optionalText("inside")
            .map(t -> new NamedBand.Relation(NamedBand.Kind.INSIDE, t.value()));
    Optional<NamedBand.Relation> straddles =
        fields
            .optionalText("straddles")
            .map(t -> new NamedBand.Relation(NamedBand.Kind.STRADDLES, t.value()));
    return inside.or(() -> straddles);
  }

  private void relationIsKnown(NamedBand band) {
    band.relation()
        .filter(r -> !known.bandOf(r.other(), band.of()))
        .ifPresent(
            r ->
                problems.add(
                    Diagnostic.error(
                            DiagnosticCode.UNKNOWN_BAND,
                            band.place().span(),
                            "no band of `" + band.of() + "` is called `" + r.other() + "`")
                        .help(Fields.suggest(r.other(), known.bandsOf(band.of())))));
  }
}
