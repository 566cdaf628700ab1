package org.tidemark.guide;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;

/**
 * Reads a folder of guidance: {@code guidance/*.md} and {@code words.yaml}, or {@code
 * words/words.yaml}.
 */
public final class GuidanceFolder {
  private static final String ARTICLE = ".md";

  private final Path folder;
  private final String origin;
  private final Problems problems = new Problems();

  private GuidanceFolder(Path folder, String origin) {
    this.folder = folder;
    this.origin = origin;
  }

  /**
   * The guidance of one folder alone.
   *
   * @param folder where it lies
   * @param origin what hits call it
   */
  public static Loaded<Guidance> read(Path folder, String origin) {
    return new GuidanceFolder(folder, origin).onto(new Guidance(List.of(), Words.NONE, Map.of()));
  }

  /** The guidance of files that were read already. */
  public static Loaded<Guidance> read(
      List<SourceText> articles, List<SourceText> words, String origin) {
    GuidanceFolder files = new GuidanceFolder(Path.of(""), origin);
    return files.onto(
        new Guidance(List.of(), Words.NONE, Map.of()),
        files.entries(articles),
        words.stream().map(files::words).reduce(Words.NONE, Words::and));
  }

  /** Guidance as a hospital's folder changes it. */
  public static Loaded<Guidance> read(Guidance below, Path folder, String origin) {
    return new GuidanceFolder(folder, origin).onto(below);
  }

  private Loaded<Guidance> onto(Guidance below) {
    List<SourceText> articles =
        files(folder.resolve("guidance")).stream().flatMap(f -> text(f).stream()).toList();
    return onto(below, entries(articles), words());
  }

  private Loaded<Guidance> onto(Guidance below, List<ShelfEntry> entries, Words words) {
    Loaded<Guidance> changed = below.with(entries, words);
    problems.addAll(changed.diagnostics());
    return problems.anyError()
        ? Loaded.broken(problems.sorted())
        : changed.match(good -> Loaded.good(good, problems.sorted()), Loaded::broken);
  }

  private List<ShelfEntry> entries(List<SourceText> articles) {
    List<ShelfEntry> entries = new ArrayList<>();
    ArticleReader reader = new ArticleReader(origin);
    articles.forEach(text -> keep(reader.entry(text), entries));
    return entries;
  }

  private void keep(Loaded<ShelfEntry> entry, List<ShelfEntry> entries) {
    problems.addAll(entry.diagnostics());
    entry.match(entries::add, errors -> false);
  }

  private List<Path> files(Path guidance) {
    if (!Files.isDirectory(guidance)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(guidance)) {
      List<Path> files = all.sorted().toList();
      files.stream().filter(file -> !isArticle(file)).forEach(this::notRead);
      return files.stream().filter(GuidanceFolder::isArticle).toList();
    } catch (IOException unreadable) {
      problems.add(missing(guidance));
      return List.of();
    }
  }

  private static boolean isArticle(Path file) {
    return file.getFileName().toString().endsWith(ARTICLE);
  }

  private void notRead(Path file) {
    problems.add(
        Diagnostic.warning(
                DiagnosticCode.WRONG_SHAPE,
                SourceText.of(file.toString(), "").beginning(),
                "this file is not read")
            .help("the name of an article ends in " + ARTICLE));
  }

  private Words words() {
    return Stream.of(folder.resolve("words.yaml"), folder.resolve("words").resolve("words.yaml"))
        .filter(Files::exists)
        .map(this::words)
        .reduce(Words.NONE, Words::and);
  }

  private Words words(Path file) {
    return text(file).map(this::words).orElse(Words.NONE);
  }

  private Words words(SourceText text) {
    return problems.keep(new WordsReader().read(text), () -> Words.NONE);
  }

  private Optional<SourceText> text(Path file) {
    try {
      Loaded<SourceText> text = SourceText.decode(file.toString(), Files.readAllBytes(file));
      problems.addAll(text.diagnostics());
      return text.match(Optional::of, errors -> Optional.empty());
    } catch (IOException unreadable) {
      problems.add(missing(file));
      return Optional.empty();
    }
  }

  private static Diagnostic missing(Path file) {
    return Diagnostic.error(
        DiagnosticCode.MISSING_FILE,
        SourceText.of(file.toString(), "").beginning(),
        "this cannot be read");
  }
}
