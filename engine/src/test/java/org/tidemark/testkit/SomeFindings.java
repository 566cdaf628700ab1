package org.tidemark.testkit;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Findings;
import org.tidemark.model.Option;
import org.tidemark.model.Seen;
import org.tidemark.source.Place;
import org.tidemark.source.SourceText;

/** Makes up what may have been entered for a generated policy. */
public final class SomeFindings {
  private static final Place NOWHERE = Place.at(SourceText.of("generated", "x").beginning());

  private SomeFindings() {}

  /** About two findings in five, now and then as a stretch or as one of two options. */
  public static Findings of(EffectivePolicy policy, Random random) {
    Map<String, Findings.Entry> entries = new LinkedHashMap<>();
    for (Finding finding : policy.vocabulary().findings()) {
      if (random.nextInt(5) < 2) {
        entries.put(finding.name(), new Findings.Entry(seen(finding, random), NOWHERE));
      }
    }
    return new Findings(entries);
  }

  private static Seen seen(Finding finding, Random random) {
    if (finding.domain() instanceof Domain.Measure && random.nextInt(4) > 0) {
      BigDecimal low = BigDecimal.valueOf(random.nextInt(5)).multiply(new BigDecimal("0.5"));
      BigDecimal high = random.nextBoolean() ? low : new BigDecimal("2");
      return Seen.between(low, high);
    }
    Set<String> some = new LinkedHashSet<>();
    List<Option> options = finding.domain().options();
    for (int i = 0; i < 1 + random.nextInt(2) && !options.isEmpty(); i++) {
      some.add(options.get(random.nextInt(options.size())).name());
    }
    return some.isEmpty() ? Seen.number(BigDecimal.ONE) : Seen.options(some);
  }
}
