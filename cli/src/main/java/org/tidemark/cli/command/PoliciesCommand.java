package org.tidemark.cli.command;

import java.time.LocalDate;
import java.util.List;
import org.tidemark.cli.options.FolderOptions;
import org.tidemark.cli.options.Today;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.model.Header;
import org.tidemark.report.PoliciesJson;
import org.tidemark.report.PoliciesText;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists what policies there are. */
@Command(
    name = "policies",
    description = {
      "Lists the policies that can be named: owner, edition, kind, population, status and review date.",
      "Each is read and checked on the way, so a broken one is reported here too."
    },
    footer = {
      "",
      "Examples:",
      "  tidemark policies",
      "  tidemark policies --folder our-policies --json"
    })
final class PoliciesCommand extends Verb {
  @Mixin private final FolderOptions folders = new FolderOptions();
  @Mixin private final Today today = new Today();

  @Option(names = "--json", description = "Writes JSON.")
  private boolean json;

  PoliciesCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    Loaded<List<Header>> headers = folders.tidemark().policies();
    LocalDate day = today.day();
    return headers.match(
        all -> list(all, day), broken -> console().refuse(broken, json, ExitCode.POLICY_BROKEN));
  }

  private ExitCode list(List<Header> headers, LocalDate day) {
    console().answer(json ? PoliciesJson.of(headers, day) : PoliciesText.of(headers, day));
    return headers.isEmpty() ? ExitCode.NOTHING_FOUND : ExitCode.DONE;
  }
}
