package org.tidemark.guide;

import java.util.List;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;

/** Reads a file of words. */
public final class WordsReader {
  public Loaded<Words> read(SourceText file) {
    return new YamlReader().read(file).match(WordsReader::words, Loaded::broken);
  }

  private static Loaded<Words> words(YamlNode node) {
    Problems problems = new Problems();
    Entries entries = Entries.of(node, "the word list", problems);
    entries.text("words");
    entries.optionalText("edition");
    Words words =
        new Words(
            entries.list("same").stream().map(item -> same(item, problems)).toList(),
            groups(entries, "apart", problems),
            entries.texts("keep"),
            groups(entries, "spelling", problems),
            entries.texts("light"),
            entries.list("urgent").stream().map(item -> signpost(item, problems)).toList(),
            entries.list("scope").stream().map(item -> signpost(item, problems)).toList(),
            entries.list("elsewhere").stream().map(item -> elsewhere(item, problems)).toList(),
            entries.list("numbers").stream().map(item -> number(item, problems)).toList());
    entries.done();
    return problems.conclude(() -> words);
  }

  private static Words.Group same(YamlNode node, Problems problems) {
    Entries entries = Entries.of(node, "the group", problems);
    Words.Group group = several(entries.someTexts("words"), "words", problems);
    entries.done();
    return group;
  }

  private static List<Words.Group> groups(Entries entries, String key, Problems problems) {
    return entries.groups(key).stream().map(group -> several(group, key, problems)).toList();
  }

  private static Words.Group several(List<Located<String>> phrases, String key, Problems problems) {
    if (phrases.size() == 1) {
      problems.add(
          Diagnostic.error(
                  DiagnosticCode.WRONG_SHAPE,
                  phrases.get(0).span(),
                  "a group of `" + key + "` needs at least two")
              .help("add the word it goes with, or delete the line"));
    }
    return new Words.Group(phrases);
  }

  private static Words.Signpost signpost(YamlNode node, Problems problems) {
    Entries entries = Entries.of(node, "the signpost", problems);
    Words.Signpost signpost =
        new Words.Signpost(
            entries.text("article"),
            entries.someTexts("phrases"),
            entries.texts("with"),
            entries.texts("unless"));
    entries.done();
    return signpost;
  }

  private static Words.Elsewhere elsewhere(YamlNode node, Problems problems) {
    Entries entries = Entries.of(node, "the area", problems);
    Words.Elsewhere area =
        new Words.Elsewhere(entries.someTexts("phrases"), entries.texts("unless"));
    entries.done();
    return area;
  }

  private static Words.NumberRoute number(YamlNode node, Problems problems) {
    Entries entries = Entries.of(node, "the number", problems);
    Words.NumberRoute route =
        new Words.NumberRoute(
            entries.text("unit").value(),
            entries.text("article"),
            entries.texts("above-limit"),
            entries.texts("asked-limits"));
    entries.done();
    return route;
  }
}
