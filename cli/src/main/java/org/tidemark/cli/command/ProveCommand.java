package org.tidemark.cli.command;

import java.util.List;
import org.tidemark.cli.options.PolicyOptions;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.prove.Proof;
import org.tidemark.prove.Prover;
import org.tidemark.prove.Verdict;
import org.tidemark.report.ProofsJson;
import org.tidemark.report.ProofsText;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Proves what every policy must be able to show. */
@Command(
    name = "prove",
    description = {
      "Proves claims about a policy over every case there can be: that none is left without a rule, that no answer is less cautious than the"
          + " floor's, that what must not count never helps, and more. A claim that does not hold comes with a case that shows it."
    },
    footer = {
      "",
      "Examples:",
      "  tidemark prove",
      "  tidemark prove --policy our-policies/ward-adult --json"
    })
final class ProveCommand extends Verb {
  @Mixin private final PolicyOptions policy = new PolicyOptions();

  @Option(names = "--json", description = "Writes JSON.")
  private boolean json;

  ProveCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    Loaded<EffectivePolicy> read = policy.policy(policy.tidemark());
    return read.match(
        effective -> {
          remark(read.diagnostics(), json);
          return prove(effective);
        },
        broken -> noPolicy(broken, json));
  }

  private ExitCode prove(EffectivePolicy effective) {
    List<Proof> proofs = new Prover().prove(effective, effective.heldAgainst());
    console()
        .answer(
            json
                ? ProofsJson.of(effective, proofs, remarks())
                : ProofsText.of(effective, proofs, remarks()));
    if (proofs.stream().anyMatch(p -> p.verdict() instanceof Verdict.Undecided)) {
      return ExitCode.UNDECIDED;
    }
    return proofs.stream().allMatch(p -> p.verdict().proved()) ? ExitCode.DONE : ExitCode.NOT_SO;
  }
}
