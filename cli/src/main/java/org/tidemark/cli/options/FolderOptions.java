package org.tidemark.cli.options;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidemark.Tidemark;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where a hospital keeps its own policies. */
public class FolderOptions {
  @Option(
      names = "--folder",
      paramLabel = "FOLDER",
      description = {
        "A folder with your hospital's policies, each in a folder of its name that holds policy.yaml.",
        "The verb find also reads your own guidance there: guidance/*.md and words.yaml.",
        "May be given more than once."
      })
  private final List<Path> folders = new ArrayList<>();

  @Spec(Spec.Target.MIXEE)
  private @Nullable CommandSpec verb;

  /** The engine, with those folders. */
  public Tidemark tidemark() {
    folders.forEach(this::mustBeReadable);
    Tidemark.Builder builder = Tidemark.builder();
    folders.forEach(builder::folder);
    return builder.build();
  }

  private void mustBeReadable(Path folder) {
    if (verb != null && !(Files.isDirectory(folder) && Files.isReadable(folder))) {
      String why = Files.exists(folder) ? " is no folder that may be read." : " does not exist.";
      throw new ParameterException(verb.commandLine(), "The folder " + folder + why);
    }
  }
}
