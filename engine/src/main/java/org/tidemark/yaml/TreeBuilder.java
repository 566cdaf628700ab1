package org.tidemark.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Invisible;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;
import org.tidemark.source.Typed;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Builds the tree from the parser's events. Events, and not composed nodes, since only they still
 * show duplicate keys, aliases, tags and further documents.
 */
final class TreeBuilder {
  private static final Pattern INDENTED_BY_NUMBER = Pattern.compile("[>|][+-]?[0-9].*");

  private static final Pattern GLUED = Pattern.compile("([a-z][a-z0-9-]*):(.+)");
  private static final Pattern DASH_WITHOUT_SPACE = Pattern.compile("(?s)-(?![0-9.-]).+");

  private final SourceText source;
  private final YamlLimits limits;
  private final Draft draft = new Draft();
  private final Problems problems = draft.problems;
  private final Offsets offsets;
  private final Parser parser;
  private int nodes;
  private Optional<Span> quoted = Optional.empty();

  TreeBuilder(SourceText source, String clean, YamlLimits limits) {
    this.source = source;
    this.limits = limits;
    this.offsets = new Offsets(clean);
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(limits.characters() + 1);
    this.parser = new ParserImpl(new StreamReader(clean), options);
  }

  /** One pass over the text, to its end or to the first thing that cannot be parsed. */
  Draft build() {
    try {
      draft.root = document();
    } catch (MarkedYAMLException malformed) {
      Span at = placeOf(malformed.getProblemMark()).orElse(source.beginning());
      draft.stumble = Optional.of(stumble(String.valueOf(malformed.getProblem()), at, malformed));
    }
    return draft;
  }

  private Stumble stumble(String problem, Span at, MarkedYAMLException malformed) {
    return new Stumble(problem, at, placeOf(malformed.getContextMark()), quoted);
  }

  private Optional<YamlNode> document() {
    parser.getEvent(); // stream start
    if (parser.checkEvent(Event.ID.StreamEnd)) {
      return nothingAtAll();
    }
    directives((DocumentStartEvent) parser.getEvent());
    YamlNode root = node(0);
    parser.getEvent(); // document end
    if (!parser.checkEvent(Event.ID.StreamEnd)) {
      severalDocuments(parser.getEvent());
    }
    if (root instanceof YamlText text && text.isMissing()) {
      return nothingAtAll();
    }
    return Optional.of(root);
  }

  private Optional<YamlNode> nothingAtAll() {
    problems.add(
        Diagnostic.error(DiagnosticCode.EMPTY_FILE, source.beginning(), "the file holds nothing")
            .help("check that it is the file that was meant, and that it was saved"));
    return Optional.empty();
  }

  private void directives(DocumentStartEvent start) {
    boolean tags = start.getTags() != null && !start.getTags().isEmpty();
    if (start.getVersion() != null || tags) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.TAG,
                  firstCharacter(start),
                  "a line that begins with % stands here")
              .help("delete it, and the --- below it"));
    }
  }

  private void severalDocuments(Event second) {
    problems.add(SyntaxHelp.severalDocuments(firstLine(second)));
  }

  private YamlNode node(int depth) {
    Event event = parser.getEvent();
    count(event, depth);
    if (event instanceof AliasEvent) {
      alias(event);
      return new YamlText("", YamlText.Style.QUOTED, spanOf(event));
    }
    noAnchorOrTag((NodeEvent) event);
    if (event instanceof ScalarEvent scalar) {
      return text(scalar);
    }
    return event instanceof MappingStartEvent ? map(event, depth) : list(event, depth);
  }

  private void count(Event event, int depth) {
    nodes++;
    if (depth >= limits.depth() && event instanceof CollectionStartEvent) {
      throw new OverLimitException(
          spanOf(event), "this lies deeper than " + limits.depth() + " levels");
    }
    if (nodes > limits.nodes()) {
      throw new OverLimitException(
          spanOf(event), "the file has more than " + limits.nodes() + " parts");
    }
  }

  private void alias(Event event) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.ANCHOR_OR_ALIAS,
                spanOf(event),
                "an alias stands here in place of a value")
            .help("write the value itself; " + SyntaxHelp.copy(spanOf(event).text())));
  }

  private void noAnchorOrTag(NodeEvent event) {
    if (event.getAnchor() != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.ANCHOR_OR_ALIAS, firstCharacter(event), "an anchor stands here")
              .help("delete it; " + SyntaxHelp.copy(restOfLine(event))));
    }
    String tag = tagOf(event);
    if (tag != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.TAG, firstCharacter(event), "an explicit tag stands here: " + tag)
              .help("delete it; " + SyntaxHelp.copy(restOfLine(event))));
    }
  }

  private static @Nullable String tagOf(NodeEvent event) {
    if (event instanceof ScalarEvent scalar) {
      return scalar.getTag();
    }
    return event instanceof CollectionStartEvent start ? start.getTag() : null;
  }

  private YamlText text(ScalarEvent scalar) {
    YamlText.Style style =
        switch (scalar.getScalarStyle()) {
          case PLAIN -> YamlText.Style.PLAIN;
          case LITERAL, FOLDED -> YamlText.Style.BLOCK;
          case SINGLE_QUOTED, DOUBLE_QUOTED, JSON_SCALAR_STYLE -> YamlText.Style.QUOTED;
        };
    if (scalar.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED) {
      noControlCharacters(scalar);
    }
    Span at = trimmed(spanOf(scalar));
    if (style == YamlText.Style.BLOCK) {
      isLongText(scalar, at);
    }
    boolean dash = style == YamlText.Style.PLAIN && scalar.getValue().startsWith("-");
    if (dash && DASH_WITHOUT_SPACE.matcher(scalar.getValue()).matches()) {
      problems.add(SyntaxHelp.dashWithoutSpace(firstLineOf(at)));
    }
    quoted = style == YamlText.Style.QUOTED ? Optional.of(at) : quoted;
    YamlText text = new YamlText(withoutSoft(scalar.getValue()), style, at);
    draft.texts.put(at.start(), at);
    draft.values.put(at.start(), text);
    return text;
  }

  private static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) > '~') {
        return false;
      }
    }
    return true;
  }

  private static String withoutSoft(String text) {
    if (isAscii(text) || text.codePoints().noneMatch(Invisible::isSoft)) {
      return text;
    }
    StringBuilder rest = new StringBuilder(text.length());
    text.codePoints().filter(c -> !Invisible.isSoft(c)).forEach(rest::appendCodePoint);
    return rest.toString();
  }

  /** {@code >5} is a long text that holds nothing, and hardly what its author meant. */
  private void isLongText(ScalarEvent scalar, Span at) {
    if (scalar.getValue().isBlank() || INDENTED_BY_NUMBER.matcher(firstLine(at)).matches()) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.SYNTAX,
                  at,
                  "a value that begins with > or | opens a long text, and this is none")
              .help("write limits in words: at-most, below, at-least, above"));
    }
  }

  private Span firstLineOf(Span at) {
    return source.span(at.start(), Math.min(at.end(), source.endOfLine(at.line())));
  }

  private static String firstLine(Span at) {
    return at.text().lines().findFirst().orElse("");
  }

  private Span firstLine(Event event) {
    Span at = firstCharacter(event);
    return source.span(at.start(), source.endOfLine(at.line()));
  }

  private String restOfLine(Event event) {
    return firstLine(event).text().strip();
  }

  /**
   * In double quotes a backslash makes characters that nobody typed; none of them belongs into a
   * policy.
   */
  private void noControlCharacters(ScalarEvent scalar) {
    boolean escaped = spanOf(scalar).text().indexOf('\\') >= 0;
    if (escaped && scalar.getValue().codePoints().anyMatch(TreeBuilder::isUnseen)) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.INVISIBLE_CHARACTER,
                  spanOf(scalar),
                  "a backslash in double quotes makes a character here that nobody sees")
              .help("use single quotes, or forward slashes in a path"));
    }
  }

  private static boolean isUnseen(int c) {
    boolean soft = Invisible.isSoft(c);
    return Character.isISOControl(c) || (Invisible.isInvisible(c) && !soft);
  }

  private YamlList list(Event start, int depth) {
    List<YamlNode> items = new ArrayList<>();
    while (!parser.checkEvent(Event.ID.SequenceEnd)) {
      items.add(node(depth + 1));
    }
    return new YamlList(items, extent(start, parser.getEvent()));
  }

  private YamlMap map(Event start, int depth) {
    Map<String, YamlMap.Entry> entries = new LinkedHashMap<>();
    while (!parser.checkEvent(Event.ID.MappingEnd)) {
      Optional<YamlText> key = key(depth);
      YamlNode value = node(depth + 1);
      key.ifPresent(k -> add(spaced(new YamlMap.Entry(k, value)), entries));
    }
    return new YamlMap(List.copyOf(entries.values()), extent(start, parser.getEvent()));
  }

  /** {@code {max:5.5}} is one long name without a value; what was meant is plain. */
  private YamlMap.Entry spaced(YamlMap.Entry entry) {
    boolean missing = entry.value() instanceof YamlText text && text.isMissing();
    if (!missing || entry.key().style() != YamlText.Style.PLAIN) {
      return entry;
    }
    Matcher glued = GLUED.matcher(entry.key().text());
    if (!glued.matches()) {
      return entry;
    }
    Span at = entry.key().span();
    problems.add(SyntaxHelp.noSpace(at, glued.group(1), glued.group(2)));
    return new YamlMap.Entry(
        new YamlText(glued.group(1), YamlText.Style.PLAIN, at),
        new YamlText(glued.group(2), YamlText.Style.PLAIN, at));
  }

  private void add(YamlMap.Entry entry, Map<String, YamlMap.Entry> entries) {
    YamlMap.Entry first = entries.putIfAbsent(entry.key().text(), entry);
    if (first != null) {
      duplicate(first, entry);
    }
  }

  /** The name of a field; what cannot be one is reported, and the field left out. */
  private Optional<YamlText> key(int depth) {
    YamlNode key = node(depth + 1);
    draft.values.remove(key.span().start());
    if (!(key instanceof YamlText text)) {
      notAName(DiagnosticCode.KEY_NOT_TEXT, key, key.kind() + " cannot be a name");
      return Optional.empty();
    }
    if (!draft.texts.containsKey(key.span().start())) {
      return Optional.empty(); // an alias, reported already
    }
    if (text.text().equals("<<") && text.style() == YamlText.Style.PLAIN) {
      notAName(DiagnosticCode.ANCHOR_OR_ALIAS, key, "a merge key stands here");
      return Optional.empty();
    }
    if (text.text().isBlank()) {
      notAName(DiagnosticCode.KEY_NOT_TEXT, key, "there is no name before this colon");
      return Optional.empty();
    }
    if (askedFor(text)) {
      notAName(DiagnosticCode.KEY_NOT_TEXT, key, "a question mark stands before this name");
      return Optional.empty();
    }
    return Optional.of(text);
  }

  /** {@code ? name} is YAML's long way to write a name; here it is a text that lost its quotes. */
  private boolean askedFor(YamlText key) {
    int start = key.span().start();
    int at = start;
    while (at > 0 && source.text().charAt(at - 1) == ' ') {
      at--;
    }
    return at < start && at > 0 && source.text().charAt(at - 1) == '?';
  }

  private void notAName(DiagnosticCode code, YamlNode key, String message) {
    problems.add(
        Diagnostic.error(code, key.span(), message)
            .help(
                "write the name of a field, a colon and its value; text that begins with { or [ goes in quotes"));
  }

  private void duplicate(YamlMap.Entry first, YamlMap.Entry second) {
    String name = second.key().text();
    problems.add(
        Diagnostic.error(
                DiagnosticCode.DUPLICATE_KEY,
                second.key().span(),
                Typed.shown(name) + " stands twice: here with " + shown(second.value()))
            .and(first.key().span(), "and here with " + shown(first.value()))
            .help("keep the one that is meant and delete the other"));
  }

  private static String shown(YamlNode node) {
    return node instanceof YamlText text ? Typed.shown(text.text()) : node.kind();
  }

  private Span extent(Event start, Event end) {
    return trimmed(source.span(offsets.of(start.getStartMark()), offsets.of(end.getEndMark())));
  }

  /**
   * A block ends where the next thing begins; the place of what was written ends with its last
   * visible sign.
   */
  private Span trimmed(Span span) {
    int end = span.end();
    while (end > span.start() && Character.isWhitespace(source.text().charAt(end - 1))) {
      end--;
    }
    return source.span(span.start(), end);
  }

  private Span spanOf(Event event) {
    return source.span(offsets.of(event.getStartMark()), offsets.of(event.getEndMark()));
  }

  private Span firstCharacter(Event event) {
    int start = offsets.of(event.getStartMark());
    return source.span(start, Math.min(start + 1, source.text().length()));
  }

  private Optional<Span> placeOf(@Nullable Mark mark) {
    return Optional.ofNullable(mark)
        .map(offsets::of)
        .map(start -> source.span(start, Math.min(start + 1, source.text().length())));
  }
}
