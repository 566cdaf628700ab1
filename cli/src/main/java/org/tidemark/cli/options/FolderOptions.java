package org.tidemark.cli.options;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tidemark.Tidemark;
import picocli.CommandLine.Option;

/** Where a hospital keeps its own policies. */
public class FolderOptions {
  @Option(
      names = "--folder",
      paramLabel = "FOLDER",
      description = {
        "A folder with your hospital's policies, each in a folder of its name that holds policy.yaml.",
        "May be given more than once."
      })
  private final List<Path> folders = new ArrayList<>();

  /** The engine, with those folders. */
  public Tidemark tidemark() {
    Tidemark.Builder builder = Tidemark.builder();
    folders.forEach(builder::folder);
    return builder.build();
  }
}
