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
import org.tidemark.print.CardPage;
import org.tidemark.print.Cards;
import org.tidemark.report.CardsJson;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a card as a page. */
@Command(
    name = "card",
    description = {
      "Writes a bedside card as an HTML page that prints on one sheet.",
      "Nothing is printed from a floor, after the policy's review date, or while a claim about the policy is not proved (see the verb prove)."
    },
    footer = {
      "",
      "Examples:",
      "  tidemark card --list",
      "  tidemark card before-first-use",
      "  tidemark card tray-fine-feeding --out tray.html --replace"
    })
final class CardCommand extends Verb {
  @Parameters(
      arity = "0..1",
      paramLabel = "NAME",
      description = "The card's name, as --list shows it.")
  private @Nullable String name;

  @Option(names = "--list", description = "Lists the cards that the policy has.")
  private boolean list;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where to write the page. Without it: NAME.html in this folder.")
  private @Nullable Path out;

  @Option(names = "--replace", description = "Writes over a file that is there.")
  private boolean replace;

  @Mixin private final PolicyOptions policies = new PolicyOptions();
  @Mixin private final Today today = new Today();

  @Option(names = "--json", description = "Writes JSON: what was written, or the list.")
  private boolean json;

  CardCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    if (list == (name != null)) {
      return wrong("Give the name of a card, or --list.");
    }
    Tidemark tidemark = policies.tidemark();
    Loaded<EffectivePolicy> policy = policies.policy(tidemark);
    return policy.match(
        p -> {
          remark(policy.diagnostics(), json);
          return print(tidemark, p);
        },
        broken -> noPolicy(broken, json));
  }

  private ExitCode print(Tidemark tidemark, EffectivePolicy policy) {
    Cards cards = tidemark.cards(policy, today.day());
    if (name == null) {
      console()
          .answer(
              json
                  ? CardsJson.list(cards.names(), remarks())
                  : String.join("\n", cards.names()) + "\n");
      return ExitCode.DONE;
    }
    if (!cards.names().contains(name)) {
      return console().refuse(cards.page(name).diagnostics(), json, ExitCode.COMMAND_LINE_WRONG);
    }
    Loaded<CardPage> page = cards.page(name);
    return page.match(
        card -> proved(tidemark, policy).orElseGet(() -> write(card, page)),
        broken -> console().refuse(broken, json, ExitCode.POLICY_BROKEN));
  }

  /** What is wrong with a policy must not hang on a wall. */
  private Optional<ExitCode> proved(Tidemark tidemark, EffectivePolicy policy) {
    List<Diagnostic> missing = tidemark.notProved(policy);
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of(console().refuse(missing, json, ExitCode.NOT_SO));
  }

  private ExitCode write(CardPage card, Loaded<CardPage> page) {
    remark(page.diagnostics(), json);
    Path file = out == null ? Path.of(card.name() + ".html") : out;
    String trouble = new OutFile(file, replace).write(card.html());
    if (!trouble.isEmpty()) {
      return wrong(trouble);
    }
    console()
        .answer(
            json
                ? CardsJson.written(card, file.toString(), remarks())
                : "Wrote " + file + ": " + card.title() + ", code " + card.code() + ".\n");
    return ExitCode.DONE;
  }
}
