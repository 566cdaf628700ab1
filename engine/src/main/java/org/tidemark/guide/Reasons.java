package org.tidemark.guide;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Says in plain words why an article is a hit. */
final class Reasons {
  private final GuideAnalyzer texts;
  private final QueryReading reading;
  private final List<Piece> pieces;

  Reasons(GuideAnalyzer texts, QueryReading reading, List<Piece> pieces) {
    this.texts = texts;
    this.reading = reading;
    this.pieces = pieces;
  }

  List<String> of(Placed placed) {
    List<String> reasons = new ArrayList<>(placed.why());
    for (QueryReading.Correction slip : reading.corrections()) {
      reasons.add("\"" + slip.typed() + "\" was read as \"" + slip.taken() + "\"");
    }
    Map<String, List<List<String>>> places = places(placed.entry());
    for (Piece piece : pieces) {
      if (!piece.light()) {
        reasons.add(where(piece, places));
      }
    }
    return reasons;
  }

  private static String where(Piece piece, Map<String, List<List<String>>> places) {
    String name = "\"" + piece.typed() + "\"";
    List<String> found = new ArrayList<>();
    for (List<String> reading : piece.readings()) {
      List<String> in =
          places.entrySet().stream()
              .filter(p -> holds(p.getValue(), reading))
              .map(Map.Entry::getKey)
              .toList();
      if (!in.isEmpty()) {
        String as =
            reading.equals(piece.segment().typed())
                ? ""
                : "as \"" + String.join(" ", reading) + "\" ";
        found.add(as + "in " + String.join(", ", in));
      }
    }
    return found.isEmpty()
        ? name + " does not stand here"
        : name + " stands here " + String.join("; ", found);
  }

  private static boolean holds(List<List<String>> texts, List<String> reading) {
    return texts.stream().anyMatch(words -> Collections.indexOfSubList(words, reading) >= 0);
  }

  private Map<String, List<List<String>>> places(Entry entry) {
    Map<String, List<List<String>>> places = new LinkedHashMap<>();
    places.put("the title", cut(List.of(entry.article().title())));
    places.put("the questions it answers", cut(entry.lines().subList(1, entry.lines().size())));
    places.put("its first lines", cut(entry.firstLines()));
    places.put("its headings", cut(entry.headings()));
    places.put("its text", cut(entry.body()));
    return places;
  }

  private List<List<String>> cut(List<String> lines) {
    return lines.stream().map(line -> Terms.words(texts, line)).toList();
  }
}
