package org.tidemark.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The word {@code tidemark} alone: it needs a verb. */
@Command(
    name = "tidemark",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisHeading = "Usage: ",
    customSynopsis = "tidemark VERB [OPTIONS]",
    description = {"", "Works from a hospital's own nasogastric-tube policy."},
    commandListHeading = "%nVerbs:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Each verb has its own help: tidemark check --help",
      "",
      "It decides nothing that the policy does not say, and it stores no patient data.",
      "It supports trained staff. Your hospital's policy and licensed practice decide."
    })
final class RootCommand implements Runnable {
  @Spec private @Nullable CommandSpec spec;

  @Option(
      names = "--fault-file",
      paramLabel = "FILE",
      description = "Where to keep the details, should the program itself fail.")
  private @Nullable Path faultFile;

  Optional<Path> faultFile() {
    return Optional.ofNullable(faultFile);
  }

  @Override
  public void run() {
    CommandLine line = spec == null ? new CommandLine(this) : spec.commandLine();
    throw new ParameterException(line, "Say what to do.");
  }
}
