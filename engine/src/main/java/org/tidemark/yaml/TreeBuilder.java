package org.tidemark.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
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
  private final SourceText source;
  private final YamlLimits limits;
  private final Problems problems;
  private final Offsets offsets;
  private final Parser parser;
  private int nodes;

  TreeBuilder(SourceText source, String clean, YamlLimits limits, Problems problems) {
    this.source = source;
    this.limits = limits;
    this.problems = problems;
    this.offsets = new Offsets(source.text());
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(limits.characters() + 1);
    this.parser = new ParserImpl(new StreamReader(clean), options);
  }

  Loaded<YamlNode> build() {
    try {
      YamlNode root = document();
      return problems.conclude(() -> root);
    } catch (MarkedYAMLException malformed) {
      problems.add(SyntaxHelp.explain(malformed, placeOf(malformed.getProblemMark())));
    } catch (YAMLException unreadable) {
      problems.add(
          Diagnostic.error(DiagnosticCode.SYNTAX, source.beginning(), firstLine(unreadable)));
    } catch (OverLimitException over) {
      problems.add(over.diagnostic());
    }
    return Loaded.broken(problems.sorted());
  }

  private static String firstLine(YAMLException e) {
    return String.valueOf(e.getMessage()).lines().findFirst().orElse("this is not YAML");
  }

  private YamlNode document() {
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
    return root;
  }

  private YamlNode nothingAtAll() {
    problems.add(
        Diagnostic.error(DiagnosticCode.EMPTY_FILE, source.beginning(), "the file holds nothing"));
    return new YamlMap(List.of(), source.beginning());
  }

  private void directives(DocumentStartEvent start) {
    boolean tags = start.getTags() != null && !start.getTags().isEmpty();
    if (start.getVersion() != null || tags) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.TAG, source.beginning(), "a line that begins with % stands here")
              .help("delete it"));
    }
  }

  private void severalDocuments(Event second) {
    problems.add(
        Diagnostic.error(
                DiagnosticCode.SEVERAL_DOCUMENTS, spanOf(second), "a second document begins here")
            .help("--- divides a file in two; keep one policy in one file, or delete the line"));
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
    if (depth > limits.depth()) {
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
            .help("write the value itself; if the text begins with *, put it in quotes"));
  }

  private void noAnchorOrTag(NodeEvent event) {
    if (event.getAnchor() != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.ANCHOR_OR_ALIAS, firstCharacter(event), "an anchor stands here")
              .help("delete it; if the text begins with &, put it in quotes"));
    }
    String tag = tagOf(event);
    if (tag != null) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.TAG, firstCharacter(event), "an explicit tag stands here: " + tag)
              .help("delete it; if the text begins with !, put it in quotes"));
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
    return new YamlText(scalar.getValue(), style, trimmed(spanOf(scalar)));
  }

  /**
   * In double quotes a backslash makes characters that nobody typed; none of them belongs into a
   * policy.
   */
  private void noControlCharacters(ScalarEvent scalar) {
    if (scalar.getValue().chars().anyMatch(c -> Character.isISOControl(c) && c != '\n')) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.INVISIBLE_CHARACTER,
                  spanOf(scalar),
                  "a backslash in double quotes makes a control character here")
              .help("use single quotes, or forward slashes in a path"));
    }
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
      YamlText key = key(depth);
      YamlNode value = node(depth + 1);
      YamlMap.Entry entry = new YamlMap.Entry(key, value);
      YamlMap.Entry first = entries.putIfAbsent(key.text(), entry);
      if (first != null) {
        duplicate(first, entry);
      }
    }
    return new YamlMap(List.copyOf(entries.values()), extent(start, parser.getEvent()));
  }

  private YamlText key(int depth) {
    YamlNode key = node(depth + 1);
    if (key instanceof YamlText text && !text.text().equals("<<")) {
      return text;
    }
    boolean merge = key instanceof YamlText;
    problems.add(
        Diagnostic.error(
                merge ? DiagnosticCode.ANCHOR_OR_ALIAS : DiagnosticCode.KEY_NOT_TEXT,
                key.span(),
                merge ? "a merge key stands here" : key.kind() + " cannot be a key")
            .help(
                "write the name of a field, a colon and its value; text that begins with { or [ goes in quotes"));
    return new YamlText(key.span().text(), YamlText.Style.QUOTED, key.span());
  }

  private void duplicate(YamlMap.Entry first, YamlMap.Entry second) {
    String name = second.key().text();
    problems.add(
        Diagnostic.error(
                DiagnosticCode.DUPLICATE_KEY,
                second.key().span(),
                "`" + name + "` stands twice: here with " + shown(second.value()))
            .and(first.key().span(), "and here with " + shown(first.value()))
            .help("keep the one that is meant and delete the other"));
  }

  private static String shown(YamlNode node) {
    return node instanceof YamlText text ? "`" + text.text() + "`" : node.kind();
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

  private Span placeOf(@Nullable Mark mark) {
    if (mark == null) {
      return source.beginning();
    }
    int start = offsets.of(mark);
    return source.span(start, Math.min(start + 1, source.text().length()));
  }
}
