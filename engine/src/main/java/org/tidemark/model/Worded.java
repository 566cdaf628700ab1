package org.tidemark.model;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** An enum whose constants stand in policies as lower-case words with hyphens. */
public interface Worded {
  String name();

  /** The word, such as {@code set-aside}. */
  default String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The constant that a word stands for. */
  static <E extends Enum<E> & Worded> Optional<E> find(Class<E> type, String word) {
    return Arrays.stream(type.getEnumConstants()).filter(e -> e.word().equals(word)).findFirst();
  }

  /** All words of an enum, in its order. */
  static <E extends Enum<E> & Worded> List<String> words(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Worded::word).toList();
  }
}
