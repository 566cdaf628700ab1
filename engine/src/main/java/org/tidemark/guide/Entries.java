package org.tidemark.guide;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidemark.model.Worded;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Suggestion;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlText;

/** The fields of a file's head while it is read; reports what is missing, misshapen or unknown. */
final class Entries {
  private static final int FEW = 20;

  private final YamlMap map;
  private final String what;
  private final Problems problems;
  private final Set<String> asked = new LinkedHashSet<>();

  private Entries(YamlMap map, String what, Problems problems) {
    this.map = map;
    this.what = what;
    this.problems = problems;
  }

  static Entries of(YamlNode node, String what, Problems problems) {
    if (node instanceof YamlMap map) {
      return new Entries(map, what, problems);
    }
    problems.add(wrongShape(node, what, "named fields"));
    return new Entries(new YamlMap(List.of(), node.span()), what, problems);
  }

  private static Diagnostic wrongShape(YamlNode node, String what, String wanted) {
    return Diagnostic.error(
        DiagnosticCode.WRONG_SHAPE,
        node.span(),
        what + " needs " + wanted + ", and this is " + node.kind());
  }

  boolean has(String key) {
    asked.add(key);
    return map.entry(key).isPresent();
  }

  Optional<YamlNode> optional(String key) {
    asked.add(key);
    return map.entry(key).map(YamlMap.Entry::value);
  }

  private Optional<YamlNode> required(String key) {
    if (!has(key)) {
      problems.add(
          Diagnostic.error(DiagnosticCode.MISSING_KEY, map.span(), what + " has no `" + key + "`")
              .help("add a line `" + key + ": ...`"));
    }
    return optional(key);
  }

  Optional<Located<String>> optionalText(String key) {
    return optional(key).flatMap(node -> text(node, key));
  }

  Located<String> text(String key) {
    return required(key)
        .flatMap(node -> text(node, key))
        .orElseGet(() -> Located.of("", map.span()));
  }

  private Optional<Located<String>> text(YamlNode node, String key) {
    if (node instanceof YamlText text && !text.text().isBlank()) {
      return Optional.of(Located.of(text.text().strip(), text.span()));
    }
    problems.add(wrongShape(node, "`" + key + "`", "a text"));
    return Optional.empty();
  }

  /** A list of texts; a field that is not there is an empty list. */
  List<Located<String>> texts(String key) {
    return optional(key).map(node -> texts(node, key)).orElse(List.of());
  }

  /** A list of texts with at least one in it. */
  List<Located<String>> someTexts(String key) {
    return required(key).map(node -> some(node, key)).orElse(List.of());
  }

  private List<Located<String>> some(YamlNode node, String key) {
    List<Located<String>> all = texts(node, key);
    if (all.isEmpty()) {
      problems.add(
          Diagnostic.error(DiagnosticCode.EMPTY_VALUE, node.span(), "`" + key + "` names nothing"));
    }
    return all;
  }

  private List<Located<String>> texts(YamlNode node, String key) {
    List<Located<String>> all = new ArrayList<>();
    for (YamlNode item : items(node, key)) {
      text(item, key).ifPresent(all::add);
    }
    return List.copyOf(all);
  }

  /** The items of a list. */
  List<YamlNode> list(String key) {
    return optional(key).map(node -> items(node, key)).orElse(List.of());
  }

  /** A list whose items are lists of texts. */
  List<List<Located<String>>> groups(String key) {
    return list(key).stream().map(item -> texts(item, key)).toList();
  }

  private List<YamlNode> items(YamlNode node, String key) {
    if (node instanceof YamlList list) {
      return list.items();
    }
    problems.add(wrongShape(node, "`" + key + "`", "a list"));
    return List.of();
  }

  <E extends Enum<E> & Worded> Optional<E> word(Located<String> text, Class<E> type) {
    Optional<E> found = Worded.find(type, text.value());
    if (found.isEmpty() && !text.value().isEmpty()) {
      unknownWord(text, Worded.words(type));
    }
    return found;
  }

  private void unknownWord(Located<String> text, List<String> known) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_WORD,
                text.span(),
                "`" + text.value() + "` is not a word that may stand here")
            .help(suggest(text.value(), known)));
  }

  /** One of two words, and which of them. */
  boolean either(String key, String yes, String no) {
    Optional<Located<String>> text = optionalText(key);
    if (text.isPresent() && !List.of(yes, no).contains(text.get().value())) {
      unknownWord(text.get(), List.of(yes, no));
    }
    return text.isPresent() && text.get().value().equals(yes);
  }

  static String suggest(String typed, List<String> known) {
    return Suggestion.nearest(typed, known)
        .map(near -> "did you mean `" + near + "`?")
        .orElseGet(() -> listed(known));
  }

  private static String listed(List<String> known) {
    return known.size() > FEW
        ? "nothing that exists has a name near it"
        : "write one of: " + String.join(", ", known);
  }

  /** Reports every field that nobody asked for. */
  void done() {
    for (YamlMap.Entry entry : map.entries()) {
      String key = entry.key().text();
      if (!asked.contains(key)) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.UNKNOWN_KEY,
                    entry.key().span(),
                    what + " has no field `" + key + "`")
                .help(suggest(key, List.copyOf(asked))));
      }
    }
  }
}
