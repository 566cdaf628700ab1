package org.tidemark.decide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.tidemark.model.Domain;
import org.tidemark.model.Finding;
import org.tidemark.model.Option;
import org.tidemark.model.Seen;

/** Says what was found in bedside words: labels, and numbers as their measure prints them. */
public final class FindingWords {
  private FindingWords() {}

  /** What was entered. */
  public static String of(Finding finding, Seen seen) {
    List<String> words = new ArrayList<>();
    if (finding.domain() instanceof Domain.Measure measure) {
      seen.from()
          .ifPresent(
              from -> words.add(stretch(measure, from, seen.to().orElse(from)) + unit(measure)));
    }
    finding.domain().options().stream()
        .filter(o -> seen.options().contains(o.name()))
        .map(Option::label)
        .forEach(words::add);
    return String.join(" or ", words);
  }

  /** One cell; nothing for a finding that does not exist. */
  public static Optional<String> of(Finding finding, Cell cell) {
    return seen(List.of(cell)).map(seen -> of(finding, seen));
  }

  private static String stretch(Domain.Measure measure, BigDecimal from, BigDecimal to) {
    String low = measure.print(from);
    return from.compareTo(to) == 0 ? low : low + " to " + measure.print(to);
  }

  private static String unit(Domain.Measure measure) {
    return " " + measure.unit();
  }

  /** Cells as one thing seen; their numbers must be neighbours. */
  static Optional<Seen> seen(List<Cell> cells) {
    List<String> options = new ArrayList<>();
    Optional<BigDecimal> from = Optional.empty();
    Optional<BigDecimal> to = Optional.empty();
    for (Cell cell : cells) {
      if (cell instanceof Cell.OptionCell option) {
        options.add(option.option().name());
      } else if (cell instanceof Cell.NumberCell number) {
        from = Optional.of(from.map(number.lowest()::min).orElse(number.lowest()));
        to = Optional.of(to.map(number.highest()::max).orElse(number.highest()));
      }
    }
    return options.isEmpty() && from.isEmpty()
        ? Optional.empty()
        : Optional.of(new Seen(new TreeSet<>(options), from, to));
  }
}
