package org.tidemark.model;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The values that a finding may have, as far as is known: one option, some options, one number, or
 * a stretch of numbers (a strip between two pads).
 *
 * @param options options that it may be
 * @param from the lowest number that it may be
 * @param to the highest number that it may be
 */
public record Seen(Set<String> options, Optional<BigDecimal> from, Optional<BigDecimal> to) {
  public Seen {
    options = inOrder(options);
    if (from.isPresent() != to.isPresent() || (options.isEmpty() && from.isEmpty())) {
      throw new IllegalArgumentException("a finding has at least one value, and two ends or none");
    }
  }

  /** Most findings have one value, and nothing to put in order. */
  private static Set<String> inOrder(Set<String> options) {
    return switch (options.size()) {
      case 0 -> Set.of();
      case 1 -> Set.of(options.iterator().next());
      default -> Collections.unmodifiableSet(new TreeSet<>(options));
    };
  }

  public static Seen option(String name) {
    return new Seen(Set.of(name), Optional.empty(), Optional.empty());
  }

  public static Seen options(Set<String> names) {
    return new Seen(names, Optional.empty(), Optional.empty());
  }

  public static Seen number(BigDecimal number) {
    return between(number, number);
  }

  public static Seen between(BigDecimal from, BigDecimal to) {
    return new Seen(Set.of(), Optional.of(from), Optional.of(to));
  }

  /**
   * In words, for messages: {@code obtained}, {@code 5.5}, {@code 5 to 5.5}, {@code one or
   * two-differ}.
   */
  public String words() {
    String named = options.stream().collect(Collectors.joining(" or "));
    if (from.isEmpty() || to.isEmpty()) {
      return named;
    }
    String low = from.get().toPlainString();
    String range =
        from.get().compareTo(to.get()) == 0 ? low : low + " to " + to.get().toPlainString();
    return named.isEmpty() ? range : named + " or " + range;
  }
}
