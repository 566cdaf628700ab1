package org.tidemark.content;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A query and what people judged to answer it.
 *
 * @param id its number
 * @param text the query
 * @param grades 2 for a topic that answers it, 1 for one that helps; the topic `none` stands for an
 *     empty answer
 * @param avoid topics that must not come first
 */
record JudgedQuery(String id, String text, Map<String, Integer> grades, List<String> avoid) {
  static final String NONE = "none";

  static List<JudgedQuery> all() {
    List<JudgedQuery> all = new ArrayList<>();
    for (String line : lines()) {
      if (!line.startsWith("#") && !line.startsWith("qid\t") && !line.isBlank()) {
        all.add(parse(line.split("\t", -1)));
      }
    }
    return all;
  }

  private static List<String> lines() {
    try (InputStream in = JudgedQuery.class.getResourceAsStream("judged-queries.tsv")) {
      byte[] bytes = Objects.requireNonNull(in, "judged-queries.tsv").readAllBytes();
      return new String(bytes, StandardCharsets.UTF_8).lines().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static JudgedQuery parse(String[] cells) {
    Map<String, Integer> grades = new LinkedHashMap<>();
    for (String graded : cells[2].split("\\|", -1)) {
      String[] pair = graded.split(":", -1);
      grades.put(pair[0], Integer.valueOf(pair[1]));
    }
    List<String> avoid = cells[7].isBlank() ? List.of() : List.of(cells[7].split("\\|", -1));
    return new JudgedQuery(cells[0], cells[1], grades, avoid);
  }

  int grade(String topic) {
    return grades.getOrDefault(topic, 0);
  }

  boolean odd() {
    return Integer.parseInt(id.substring(1)) % 2 == 1;
  }
}
