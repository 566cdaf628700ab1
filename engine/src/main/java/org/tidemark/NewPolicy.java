package org.tidemark;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;

/** Writes a blank policy into a folder of its own. It never writes over anything. */
final class NewPolicy {
  private static final Map<String, String> FILES = files();

  private final Resources resources;

  private final Function<FileKind, Loaded<String>> schemas;

  NewPolicy(Resources resources, Function<FileKind, Loaded<String>> schemas) {
    this.resources = resources;
    this.schemas = schemas;
  }

  private static Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("policy.yaml", "policies/new/policy.blank.yaml");
    files.put("cases.yaml", "policies/new/cases.blank.yaml");
    files.put("README.md", "policies/new/README.blank.md");
    return files;
  }

  /** The files that were written. */
  Loaded<List<Path>> write(Path folder, String buildsOn) {
    Path last = folder.toAbsolutePath().normalize().getFileName();
    String name = last == null ? "" : last.toString();
    if (!PolicyFinder.isName(name)) {
      return refused(
          folder,
          DiagnosticCode.BAD_NAME,
          "the folder's name becomes the policy's, and `" + name + "` cannot be one",
          "use a to z, digits and hyphens, such as ward-adult");
    }
    Problems problems = new Problems();
    Map<String, String> texts = new LinkedHashMap<>();
    FILES.forEach(
        (file, blank) ->
            texts.put(
                file,
                problems
                    .keep(resources.text(blank), () -> SourceText.of(blank, ""))
                    .text()
                    .replace("BUILDS-ON", buildsOn)
                    .replace("NAME", name)));
    for (FileKind kind : List.of(FileKind.POLICY, FileKind.CASES)) {
      texts.put(kind.word() + ".schema.json", problems.keep(schemas.apply(kind), () -> ""));
    }
    return problems.anyError() ? Loaded.broken(problems.sorted()) : write(folder, texts);
  }

  private static Loaded<List<Path>> write(Path folder, Map<String, String> texts) {
    try {
      Files.createDirectory(folder); // fails when something of the name is there
      for (Map.Entry<String, String> file : texts.entrySet()) {
        Files.writeString(
            folder.resolve(file.getKey()), file.getValue(), UTF_8, StandardOpenOption.CREATE_NEW);
      }
    } catch (FileAlreadyExistsException there) {
      return refused(
          folder,
          DiagnosticCode.WOULD_OVERWRITE,
          "something of this name is there already, and nothing is written over",
          "name a folder that does not exist");
    } catch (NoSuchFileException noParent) {
      return refused(
          folder,
          DiagnosticCode.MISSING_FILE,
          "the folder in which it is to lie does not exist",
          "make that folder first");
    } catch (IOException unwritable) {
      throw new UncheckedIOException("the folder " + folder + " cannot be written", unwritable);
    }
    return Loaded.good(texts.keySet().stream().map(folder::resolve).toList());
  }

  private static Loaded<List<Path>> refused(
      Path folder, DiagnosticCode code, String message, String help) {
    SourceText typed = SourceText.of("folder", folder.toString());
    return Loaded.broken(
        Diagnostic.error(code, typed.span(0, typed.text().length()), message).help(help));
  }
}
