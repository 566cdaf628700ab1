package org.tidemark.cli.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tidemark.Listing;
import org.tidemark.cli.options.FolderOptions;
import org.tidemark.cli.options.Today;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.layer.DateChecks;
import org.tidemark.model.Header;
import org.tidemark.report.PoliciesJson;
import org.tidemark.report.PoliciesText;
import org.tidemark.source.Diagnostic;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists what policies there are. */
@Command(
    name = "policies",
    description = {
      "Lists the policies that can be named: owner, edition, kind, population, status and review date.",
      "Each is read and checked on the way, and what is wrong with a broken one is said beside the list."
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
    Listing listing = folders.tidemark().policies();
    List<Header> sound = listing.policies();
    LocalDate day = today.day();
    List<Diagnostic> remarks = new ArrayList<>(listing.remarks());
    sound.forEach(header -> remarks.addAll(DateChecks.of(header, day)));
    console()
        .answer(
            json
                ? PoliciesJson.of(sound, listing.problems(), remarks, day)
                : PoliciesText.of(sound, remarks, day));
    remark(remarks, json);
    if (!listing.problems().isEmpty()) {
      console().remarks(json ? List.of() : listing.problems());
      return ExitCode.POLICY_BROKEN;
    }
    return sound.isEmpty() ? ExitCode.NOTHING_FOUND : ExitCode.DONE;
  }
}
