package org.tidemark.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidemark.Tidemark;
import org.tidemark.cli.options.PolicyOptions;
import org.tidemark.cli.options.Today;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.report.CardsJson;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes the sheet on which a committee approves a policy. */
@Command(
    name = "sign-off",
    description = {
      "Writes the sheet for those who approve a policy, as one HTML page: what changed since an earlier edition, what is answered at each"
          + " limit and one step to either side, what is proved, which warnings stand, which cards go out of date, and where to sign."
    },
    footer = {
      "",
      "Examples:",
      "  tidemark sign-off",
      "  tidemark sign-off --policy our-policies/ward-adult --since old/ward-adult --out sheet.html"
    })
final class SignOffCommand extends Verb {
  @Mixin private final PolicyOptions policies = new PolicyOptions();
  @Mixin private final Today today = new Today();

  @Option(
      names = "--since",
      paramLabel = "NAME|PATH",
      description = "The earlier edition that it takes the place of.")
  private @Nullable String since;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where to write the page. Without it: sign-off.html in this folder.")
  private Path out = Path.of("sign-off.html");

  @Option(names = "--replace", description = "Writes over a file that is there.")
  private boolean replace;

  @Option(names = "--json", description = "Writes JSON: what was written.")
  private boolean json;

  SignOffCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    Tidemark tidemark = policies.tidemark();
    Loaded<EffectivePolicy> policy = policies.policy(tidemark);
    Loaded<Optional<EffectivePolicy>> earlier = earlier(tidemark);
    return policy.match(
        sound ->
            earlier.match(
                before -> write(tidemark, sound, tidemark.signOff(policy, before, today.day())),
                broken -> noPolicy(broken, json)),
        broken -> noPolicy(broken, json));
  }

  private Loaded<Optional<EffectivePolicy>> earlier(Tidemark tidemark) {
    return since == null
        ? Loaded.good(Optional.empty())
        : tidemark.policy(since).match(p -> Loaded.good(Optional.of(p)), Loaded::broken);
  }

  private ExitCode write(Tidemark tidemark, EffectivePolicy policy, Loaded<String> page) {
    return page.match(
        html -> write(tidemark, policy, html),
        broken -> console().refuse(broken, json, ExitCode.POLICY_BROKEN));
  }

  private ExitCode write(Tidemark tidemark, EffectivePolicy policy, String html) {
    String trouble = new OutFile(out, replace).write(html);
    if (!trouble.isEmpty()) {
      return wrong(trouble);
    }
    console()
        .answer(
            json
                ? CardsJson.sheet(out.toString())
                : "Wrote " + out + ". Print it, or open it in a browser.\n");
    List<Diagnostic> missing = tidemark.notProved(policy);
    console().remarks(json ? List.of() : missing);
    return missing.isEmpty() ? ExitCode.DONE : ExitCode.NOT_SO;
  }
}
