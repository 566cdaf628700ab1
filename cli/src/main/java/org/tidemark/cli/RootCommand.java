package org.tidemark.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The word {@code tidemark} alone: it needs a verb. */
@Command(
    name = "tidemark",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Works from a hospital's own nasogastric-tube policy.",
    footer = "It decides nothing that the policy does not say, and it stores no patient data.")
final class RootCommand implements Runnable {
  @Spec private @Nullable CommandSpec spec;

  @Override
  public void run() {
    CommandLine line = spec == null ? new CommandLine(this) : spec.commandLine();
    throw new ParameterException(line, "Say what to do.");
  }
}
