package org.tidemark.model;

import java.util.List;
import org.tidemark.source.Place;

/**
 * What must be written down on one occasion.
 *
 * @param name the occasion, such as {@code at-check}
 * @param fields what to write
 * @param whenAsked questions whose answers say it, beside the one that the name stands for
 * @param backing how well it is backed
 * @param place where it is written
 */
public record RecordList(
    String name, List<String> fields, List<String> whenAsked, Rule.Backing backing, Place place) {
  /** The occasions that a question stands for by itself. */
  public static final List<String> OCCASIONS =
      List.of("at-passing", "at-check", "at-feed", "at-removal");

  public RecordList {
    fields = List.copyOf(fields);
    whenAsked = List.copyOf(whenAsked);
  }

  /** Whether the answers to a question say it. */
  public boolean isWrittenAt(String question) {
    return whenAsked.contains(question) || name.equals(occasion(question));
  }

  private static String occasion(String question) {
    return switch (question) {
      case "pass" -> "at-passing";
      case "feed" -> "at-feed";
      case "remove" -> "at-removal";
      default -> "at-check";
    };
  }
}
