package org.tidemark.load;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tidemark.model.Worded;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.source.Suggestion;
import org.tidemark.source.Typed;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlText;

/**
 * The named fields of one thing while it is read. It remembers what was asked for, so that {@link
 * #done()} can point at every field that nobody knows. A reader that finds something wrong reports
 * it and goes on with a harmless stand-in: a file with any error yields no value, so the stand-in
 * is never seen.
 */
public final class Fields {
  /** Whether a reader that the language does not declare is a fault; for developers. */
  private static final boolean STRICT = Boolean.getBoolean("tidemark.language.strict");

  private final YamlMap map;
  private final String what;
  private final Problems problems;
  private final boolean standIn;
  private final Optional<Part> part;
  private final Set<String> asked = new LinkedHashSet<>();

  public Fields(YamlMap map, String what, Problems problems) {
    this(map, what, problems, false, Language.part(what));
  }

  private Fields(
      YamlMap map, String what, Problems problems, boolean standIn, Optional<Part> part) {
    this.part = part;
    this.map = map;
    this.what = what;
    this.problems = problems;
    this.standIn = standIn;
  }

  /** The fields of a part that is declared elsewhere than in {@link Language}. */
  public static Fields of(YamlNode node, Part part, Problems problems) {
    return of(node, part.called(), part, problems);
  }

  /** The same, where messages call it by a name of its own. */
  static Fields of(YamlNode node, String what, Part part, Problems problems) {
    return of(node, what, problems, Optional.of(part));
  }

  /**
   * The fields of a node that should have some; reported and empty when it has none. What it is
   * called says which part of {@link Language} it is.
   */
  public static Fields of(YamlNode node, String what, Problems problems) {
    return of(node, what, problems, Language.part(what));
  }

  private static Fields of(YamlNode node, String what, Problems problems, Optional<Part> part) {
    if (node instanceof YamlMap map) {
      return new Fields(map, what, problems, false, part);
    }
    boolean nothing = node instanceof YamlText text && text.isMissing();
    problems.add(
        Diagnostic.error(
                nothing ? DiagnosticCode.EMPTY_VALUE : DiagnosticCode.WRONG_SHAPE,
                node.span(),
                what + " needs named fields, and this is " + node.kind())
            .help(
                nothing
                    ? "write its fields on the lines below, each two spaces further to the right"
                    : "write each field on a line of its own: its name, a colon and its value"));
    return standIn(node.span(), what, problems);
  }

  /** No fields, and no complaint about it: something else has been reported in their place. */
  static Fields standIn(Span at, String what, Problems problems) {
    return new Fields(new YamlMap(List.of(), at), what, problems, true, Optional.empty());
  }

  public Problems problems() {
    return problems;
  }

  /** Where these fields stand. */
  public Span span() {
    return map.span();
  }

  public List<YamlMap.Entry> entries() {
    map.entries().forEach(e -> asked.add(e.key().text()));
    return map.entries();
  }

  /** The same, for a second look: nothing counts as asked for. */
  List<YamlMap.Entry> seen() {
    return map.entries();
  }

  public boolean has(String key) {
    asked.add(key);
    return map.entry(key).isPresent();
  }

  /** Where the name of a field stands; the place of them all when it is not there. */
  Span key(String key) {
    return map.entry(key).map(e -> e.key().span()).orElseGet(map::span);
  }

  /**
   * The value of a field, if the field is there; a field with nothing behind its colon is an error.
   */
  public Optional<YamlNode> optional(String key) {
    asked.add(key);
    Optional<YamlMap.Entry> entry = map.entry(key);
    if (entry.isPresent() && entry.get().value() instanceof YamlText text && isBlank(text)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.EMPTY_VALUE,
                  entry.get().key().span(),
                  "nothing is written for `" + key + "`")
              .help(
                  "write its value, or delete the line; check that what belongs to it is indented"));
      return Optional.empty();
    }
    return entry.map(YamlMap.Entry::value);
  }

  private static boolean isBlank(YamlText text) {
    return text.text().isBlank();
  }

  /** The value of a field that must be there. */
  public Optional<YamlNode> required(String key) {
    if (!has(key) && !standIn) {
      problems.add(
          Diagnostic.error(DiagnosticCode.MISSING_KEY, firstKey(), what + " has no `" + key + "`")
              .help("add a line `" + key + ": ...`"));
    }
    return optional(key);
  }

  private Span firstKey() {
    return map.entries().isEmpty() ? map.span() : map.entries().get(0).key().span();
  }

  public Optional<Located<String>> optionalText(String key) {
    return optional(key).flatMap(node -> text(node, "`" + key + "`"));
  }

  public Located<String> text(String key) {
    return requiredText(key).orElseGet(() -> Located.of("", map.span()));
  }

  /** The text of a field that must be there; empty when it was reported and there is none. */
  public Optional<Located<String>> requiredText(String key) {
    return required(key).flatMap(node -> text(node, "`" + key + "`"));
  }

  private Optional<Located<String>> text(YamlNode node, String name) {
    if (node instanceof YamlText text) {
      return Optional.of(Located.of(text.text().strip(), text.span()));
    }
    problems.add(
        Diagnostic.error(
                DiagnosticCode.WRONG_SHAPE,
                node.span(),
                name + " needs a text, and this is " + node.kind())
            .help("text that begins with { or [ goes in double quotes" + copy(node)));
    return Optional.empty();
  }

  /** The same text as it can be typed, when it is short enough to be one. */
  private static String copy(YamlNode node) {
    String typed = node.span().text();
    boolean shortEnough = typed.length() <= 80 && typed.indexOf('\n') < 0;
    return shortEnough ? ": " + Typed.quoted(typed) : "";
  }

  /** A list of texts; one text alone counts as a list of one. */
  public List<Located<String>> texts(String key) {
    return optional(key).map(node -> texts(node, "`" + key + "`")).orElse(List.of());
  }

  List<Located<String>> texts(YamlNode node, String name) {
    List<Located<String>> all = new ArrayList<>();
    List<YamlNode> items = node instanceof YamlList list ? list.items() : List.of(node);
    items.forEach(item -> text(item, name).ifPresent(all::add));
    all.stream()
        .filter(t -> t.value().isEmpty() && node instanceof YamlList)
        .forEach(t -> problems.add(emptyItem(t.span(), name)));
    onceEach(all);
    return List.copyOf(all);
  }

  private static Diagnostic emptyItem(Span at, String name) {
    return Diagnostic.error(
            DiagnosticCode.EMPTY_VALUE, at, "nothing is written in this place of " + name)
        .help("write it, or take the place out of the list");
  }

  /** What stands in a list twice was copied, and something else was meant the second time. */
  private void onceEach(List<Located<String>> texts) {
    Map<String, Span> first = new HashMap<>();
    for (Located<String> text : texts) {
      Span before = first.putIfAbsent(text.value(), text.span());
      if (before != null && !text.value().isEmpty()) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.DUPLICATE_NAME,
                    text.span(),
                    Typed.shown(text.value()) + " stands twice in this list")
                .and(before, "it stands here first")
                .help("delete it, or write what was meant in its place"));
      }
    }
  }

  /** The texts of an entry that must have one or more: an empty list would say nothing at all. */
  List<Located<String>> some(YamlMap.Entry entry) {
    if (entry.value() instanceof YamlList list && list.items().isEmpty()) {
      problems.add(emptyList(list, "`" + entry.key().text() + "`"));
    }
    return texts(entry.value(), "`" + entry.key().text() + "`");
  }

  /** The texts of a field that must be there and have one or more. */
  List<Located<String>> someTexts(String key) {
    required(key);
    return map.entry(key).filter(e -> !isNothing(e.value())).map(this::some).orElse(List.of());
  }

  private static boolean isNothing(YamlNode node) {
    return node instanceof YamlText text && isBlank(text);
  }

  static Diagnostic emptyList(YamlList list, String name) {
    return Diagnostic.error(
            DiagnosticCode.EMPTY_VALUE, list.span(), "the list for " + name + " is empty")
        .help("write what it may be, or delete " + name);
  }

  /** A list of anything, each item read by the same reader. */
  public <T> List<T> list(String key, Function<YamlNode, T> reader) {
    Optional<YamlNode> node = optional(key);
    if (node.isEmpty() || leftOpen(key)) {
      return List.of();
    }
    if (node.get() instanceof YamlList list) {
      return list.items().stream().map(reader).toList();
    }
    problems.add(
        Diagnostic.error(
                DiagnosticCode.WRONG_SHAPE,
                node.get().span(),
                "`" + key + "` needs a list, and this is " + node.get().kind())
            .help("begin each item with a dash and a space"));
    return List.of();
  }

  /** The names of named things, before any of them is read. */
  List<String> names(String key) {
    asked.add(key);
    return map.entry(key).map(YamlMap.Entry::value).stream()
        .flatMap(v -> v instanceof YamlMap named ? named.entries().stream() : Stream.empty())
        .map(e -> e.key().text())
        .toList();
  }

  /** Named things, each read with its name. */
  public <T> List<T> named(String key, Function<YamlMap.Entry, T> reader) {
    Optional<YamlNode> node = optional(key).filter(n -> !leftOpen(key));
    return node.map(n -> of(n, "`" + key + "`", problems).entries().stream().map(reader).toList())
        .orElse(List.of());
  }

  /**
   * Whether a field says that it is left open; said once more to whoever reads the file, as a list
   * of what is missing.
   */
  boolean leftOpen(String key) {
    Optional<YamlNode> node = map.entry(key).map(YamlMap.Entry::value);
    boolean open = node.isPresent() && isNotStated(node.get());
    if (open) {
      problems.add(
          Diagnostic.notice(
              DiagnosticCode.NOT_STATED, node.get().span(), "`" + key + "` is not stated"));
    }
    return open;
  }

  static boolean isNotStated(YamlNode node) {
    return node instanceof YamlText text && text.text().strip().equals("not-stated");
  }

  /** A word that stands for one of an enum's constants. */
  public <E extends Enum<E> & Worded> Optional<E> word(String key, Class<E> type) {
    return optionalText(key).flatMap(text -> constant(text, type, key));
  }

  /** The same, for a field that must be there. */
  public <E extends Enum<E> & Worded> Optional<E> requiredWord(String key, Class<E> type) {
    return required(key)
        .flatMap(node -> text(node, "`" + key + "`"))
        .flatMap(text -> constant(text, type, key));
  }

  <E extends Enum<E> & Worded> Optional<E> constant(
      Located<String> text, Class<E> type, String key) {
    Optional<E> found = Worded.find(type, text.value());
    if (found.isEmpty()) {
      unknownWord(text, Worded.words(type), "`" + key + "`");
    }
    return found;
  }

  void unknownWord(Located<String> text, List<String> known, String name) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.UNKNOWN_WORD,
                text.span(),
                name + " cannot be " + Typed.shown(text.value()) + Typed.oddCharacter(text.value()))
            .help(suggest(text.value(), known)));
  }

  static String suggest(String typed, List<String> known) {
    return Suggestion.nearest(typed, known)
        .map(near -> "did you mean `" + near + "`?")
        .orElseGet(
            () ->
                known.isEmpty()
                    ? "there is none yet; write it first, or delete this"
                    : "write one of: " + String.join(", ", known));
  }

  /** A yes or a no, as text, since that is what it stays. */
  public Optional<Boolean> yesNo(String key) {
    Optional<Located<String>> text = optionalText(key);
    if (text.isPresent() && !List.of("yes", "no").contains(text.get().value())) {
      unknownWord(text.get(), List.of("yes", "no"), "`" + key + "`");
    }
    return text.map(t -> t.value().equals("yes"));
  }

  /** Reports every field that was there and that nobody asked for. */
  public void done() {
    if (STRICT && !standIn && !OtherFiles.isElsewhere(what)) {
      part.orElseThrow(() -> notDeclared(what)).heldTo(asked);
    }
    for (YamlMap.Entry entry : map.entries()) {
      String key = entry.key().text();
      if (!asked.contains(key)) {
        problems.add(
            Diagnostic.error(
                    DiagnosticCode.UNKNOWN_KEY,
                    entry.key().span(),
                    what + " has no field " + Typed.shown(key) + Typed.oddCharacter(key))
                .help(
                    suggest(key, List.copyOf(asked))
                        + "; if it belongs to a line above, check the spaces before it"));
      }
    }
  }

  private static IllegalStateException notDeclared(String what) {
    return new IllegalStateException(
        "the language has no part called '"
            + what
            + "': declare it with its fields in org.tidemark.load (Language, RuleParts, CareParts or OtherFiles);"
            + " see 'The language, declared once' in DEVELOPERS.md.");
  }
}
