package org.tidemark.cli.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tidemark.Listing;
import org.tidemark.Tidemark;
import org.tidemark.cli.options.FolderOptions;
import org.tidemark.cli.options.Today;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.layer.DateChecks;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Header;
import org.tidemark.report.PoliciesJson;
import org.tidemark.report.PoliciesText;
import org.tidemark.report.ShownJson;
import org.tidemark.report.ShownText;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists what policies there are, and shows one of them. */
@Command(
    name = "policies",
    description = {
      "Lists the policies that can be named: owner, edition, kind, population, status and review date.",
      "Each is read and checked on the way, and what is wrong with a broken one is said beside the list.",
      "With show: one policy as it holds, and where each value, rule and step of it came from."
    },
    footer = {
      "",
      "Examples:",
      "  tidemark policies",
      "  tidemark policies --folder our-policies --json",
      "  tidemark policies show example-general-adult"
    })
final class PoliciesCommand extends Verb {
  @Mixin private final FolderOptions folders = new FolderOptions();
  @Mixin private final Today today = new Today();

  @Parameters(
      arity = "0..2",
      paramLabel = "show NAME|PATH",
      description = {
        "With show and a policy: all that it says, how it holds, and what each layer says of it.",
        "With show alone: the same of the policy that is shipped as an example."
      })
  private List<String> words = List.of();

  @Option(names = "--json", description = "Writes JSON.")
  private boolean json;

  PoliciesCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    if (words.isEmpty()) {
      return list();
    }
    if (!words.get(0).equals("show")) {
      return wrong("To see one policy, write: tidemark policies show " + words.get(0));
    }
    Tidemark tidemark = folders.tidemark();
    Loaded<EffectivePolicy> policy =
        words.size() == 1 ? tidemark.demo() : tidemark.policy(words.get(1));
    return policy.match(
        sound -> {
          remark(policy.diagnostics(), json);
          console().answer(json ? ShownJson.of(sound, remarks()) : ShownText.of(sound));
          return ExitCode.DONE;
        },
        broken -> noPolicy(broken, json));
  }

  private ExitCode list() {
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
