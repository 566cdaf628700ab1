package org.tidemark;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.tidemark.guide.Guidance;
import org.tidemark.guide.GuidanceFolder;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;

/** The guidance that is shipped, and what a hospital's folders change of it, one after another. */
final class GuidanceFiles {
  /** What hits call the guidance that is shipped. */
  static final String SHIPPED = "tidemark";

  private final Resources resources;
  private final List<Path> folders;

  GuidanceFiles(Resources resources, List<Path> folders) {
    this.resources = resources;
    this.folders = List.copyOf(folders);
  }

  Loaded<Guidance> read() {
    Loaded<Guidance> all = shipped();
    for (Path folder : folders) {
      List<Diagnostic> remarks = all.diagnostics();
      all = all.match(below -> onto(below, folder, remarks), Loaded::broken);
    }
    return all;
  }

  private Loaded<Guidance> shipped() {
    Problems problems = new Problems();
    List<SourceText> articles = problems.keep(resources.all("content/guidance", ".md"), List::of);
    List<SourceText> words =
        resources
            .text("content/words/words.yaml")
            .match(List::of, broken -> problems.keep(Loaded.broken(broken), List::of));
    return problems.anyError()
        ? Loaded.broken(problems.sorted())
        : GuidanceFolder.read(articles, words, SHIPPED);
  }

  private static Loaded<Guidance> onto(Guidance below, Path folder, List<Diagnostic> remarks) {
    if (!Files.isDirectory(folder)) {
      return Loaded.broken(noFolder(folder));
    }
    Loaded<Guidance> changed = GuidanceFolder.read(below, folder, name(folder));
    Problems problems = new Problems();
    problems.addAll(remarks);
    problems.addAll(changed.diagnostics());
    return changed.match(
        good -> Loaded.good(good, problems.sorted()), broken -> Loaded.broken(problems.sorted()));
  }

  /** A folder never bears the name of what is shipped, so that every hit says whose text it is. */
  private static String name(Path folder) {
    Path last = folder.toAbsolutePath().normalize().getFileName();
    String name = last == null ? "/" : last.toString();
    return name.equals(SHIPPED) ? "folder " + name : name;
  }

  private static Diagnostic noFolder(Path folder) {
    return Diagnostic.error(
            DiagnosticCode.MISSING_FILE,
            SourceText.of(folder.toString(), "").beginning(),
            "there is no such folder")
        .help("name a folder with your hospital's policies or guidance");
  }
}
