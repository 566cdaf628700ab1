package org.tidemark.yaml;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;
import org.tidemark.source.Typed;

/**
 * One reading of one text: characters, quotes, structure, and then what only the finished tree can
 * tell. A stumble does not end it: the line is taken out of the way and reading begins again.
 */
final class Reading {
  private static final Pattern TWO_WORDS =
      Pattern.compile("(?s).*\\p{L}{2,}[^\\p{L}].*\\p{L}{2,}.*");
  private static final Pattern NUMBER_OR_DATE = Pattern.compile("[0-9][0-9.:-]*");

  private final SourceText source;
  private final YamlLimits limits;
  private final Problems problems = new Problems();
  private final Characters characters;
  private final StringBuilder clean;
  private final Recovery recovery;
  private int lastSlipped = -1;

  private Reading(SourceText source, YamlLimits limits) {
    this.source = source;
    this.limits = limits;
    this.characters = Characters.scan(source, problems);
    this.clean = characters.clean();
    this.recovery = new Recovery(source, clean);
  }

  static Tree of(SourceText source, YamlLimits limits) {
    Reading reading = new Reading(source, limits);
    try {
      return reading.read();
    } catch (OverLimitException over) {
      reading.problems.add(over.diagnostic());
      return new Tree(Optional.empty(), reading.problems.sorted(), List.of());
    }
  }

  private Tree read() {
    Draft draft = draft();
    List<Diagnostic> curly =
        characters.isAscii() ? List.of() : Quotes.straighten(source, clean, draft.texts);
    if (!curly.isEmpty()) {
      problems.addAll(curly);
      draft = draft();
    }
    while (draft.stumble.isPresent() && mended(draft.stumble.get())) {
      draft = draft();
    }
    draft.problems.sorted().stream().filter(d -> !isOurDoing(d)).forEach(problems::add);
    judgeDoubtful(draft.values);
    lostAfterHash(draft.values);
    boolean doubtful = recovery.structureIsDoubtful() || characters.isCut();
    Optional<YamlNode> root = doubtful ? Optional.empty() : draft.root;
    return new Tree(root, problems.sorted(), List.copyOf(recovery.lines()));
  }

  /** A file whose only lines were taken out of the way is not empty. */
  private boolean isOurDoing(Diagnostic d) {
    return d.code() == DiagnosticCode.EMPTY_FILE && !recovery.lines().isEmpty();
  }

  private Draft draft() {
    return new TreeBuilder(source, clean.toString(), limits).build();
  }

  private boolean mended(Stumble stumble) {
    int offset = stumble.blame().start();
    Line line = Line.of(source, clean, source.lineAt(offset));
    int number = source.lineAt(offset);
    if (!recovery.lines().contains(number)) {
      add(SyntaxHelp.explain(stumble, line), number);
    }
    return recovery.mend(offset);
  }

  /** A whole block that has slipped is one mistake, and is said once, where it begins. */
  private void add(Diagnostic said, int number) {
    boolean slipped = said.message().equals(SyntaxHelp.SLIPPED);
    if (!slipped || number - 1 != lastSlipped) {
      problems.add(said);
    }
    lastSlipped = slipped ? number : -1;
  }

  /** A space that is not an ordinary one is right in running text, and nowhere else. */
  private void judgeDoubtful(NavigableMap<Integer, YamlText> values) {
    Map<Integer, Boolean> known = new HashMap<>();
    for (Span at : characters.doubtful()) {
      Map.Entry<Integer, YamlText> before = values.floorEntry(at.start());
      boolean prose =
          before != null
              && at.end() <= before.getValue().span().end()
              && known.computeIfAbsent(before.getKey(), start -> isProse(before.getValue()));
      problems.add(
          prose
              ? Diagnostic.notice(DiagnosticCode.INVISIBLE_CHARACTER, at, Characters.what(at))
                  .help("it is read as an ordinary space, or left out where it has no width")
              : Characters.unseen(at));
    }
  }

  private static boolean isProse(YamlText text) {
    return text.style() == YamlText.Style.BLOCK || TWO_WORDS.matcher(text.text()).matches();
  }

  private void lostAfterHash(NavigableMap<Integer, YamlText> values) {
    for (YamlText text : values.values()) {
      if (text.style() == YamlText.Style.PLAIN && !text.isMissing()) {
        lostAfterHash(text);
      }
    }
  }

  private void lostAfterHash(YamlText text) {
    int end = text.span().end();
    int lineEnd = source.endOfLine(source.lineAt(end));
    int at = end;
    while (at < lineEnd && clean.charAt(at) == ' ') {
      at++;
    }
    if (at == end || at == lineEnd || clean.charAt(at) != '#') {
      return;
    }
    String rest = clean.substring(end, lineEnd);
    int hash = at - end;
    if (isPlainRemark(text, rest, hash)) {
      return;
    }
    Span lost = source.span(end + hash, end + rest.stripTrailing().length());
    problems.add(
        Diagnostic.warning(
                DiagnosticCode.LOST_AFTER_HASH,
                lost,
                "everything from this hash on is a remark and is not read: "
                    + Typed.shown(lost.text()))
            .help(
                "to keep it, write "
                    + Typed.quoted(source.text().substring(text.span().start(), lost.end()))
                    + "; a remark goes on a line of its own"));
  }

  /** A number or a date with a spaced remark behind it has lost nothing. */
  private static boolean isPlainRemark(YamlText text, String rest, int hash) {
    boolean spaced = hash + 1 == rest.length() || rest.charAt(hash + 1) == ' ';
    return spaced && NUMBER_OR_DATE.matcher(text.text()).matches();
  }
}
