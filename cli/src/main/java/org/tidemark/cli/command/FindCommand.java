package org.tidemark.cli.command;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tidemark.Tidemark;
import org.tidemark.cli.options.PolicyOptions;
import org.tidemark.cli.output.Console;
import org.tidemark.cli.output.ExitCode;
import org.tidemark.guide.Ask;
import org.tidemark.guide.Found;
import org.tidemark.guide.GuidanceFilter;
import org.tidemark.guide.GuidanceSearch;
import org.tidemark.guide.Population;
import org.tidemark.guide.Stage;
import org.tidemark.guide.TubeKind;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Worded;
import org.tidemark.report.HitsJson;
import org.tidemark.report.HitsText;
import org.tidemark.report.SuggestionsJson;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Searches the guidance. */
@Command(
    name = "find",
    description = {
      "Searches the guidance, with the policy's own numbers in the text.",
      "Type it as you would ask a colleague; spelling is forgiven."
    },
    footer = {
      "",
      "Examples:",
      "  tidemark find no aspirate",
      "  tidemark find ph 5.5 on omeprazole --limit 3",
      "  tidemark find how far to push it in --for newborn --explain",
      "  tidemark find --suggest no asp"
    })
final class FindCommand extends Verb {
  private static final int SUGGESTIONS = 8;

  @Parameters(arity = "1..*", paramLabel = "WORDS", description = "What to look for.")
  private List<String> words = List.of();

  @Option(
      names = "--for",
      paramLabel = "WHOM",
      description = "Leaves out what is not for them: adult, child or newborn.")
  private @Nullable String whom;

  @Option(
      names = "--tube",
      paramLabel = "WHICH",
      description = "Leaves out what is not for this tube: feeding or drainage.")
  private @Nullable String tube;

  @Option(
      names = "--stage",
      paramLabel = "WHEN",
      description = "Leaves out other stages: before, during, after, special or govern.")
  private @Nullable String stage;

  @Option(
      names = "--limit",
      paramLabel = "N",
      defaultValue = "5",
      description = "How many to show at most; 5 unless told.")
  private int limit;

  @Option(names = "--explain", description = "Says why each is there.")
  private boolean explain;

  @Option(
      names = "--suggest",
      description = "Lists up to eight titles and questions that hold the words begun.")
  private boolean suggest;

  @Mixin private final PolicyOptions policies = new PolicyOptions();

  @Option(names = "--json", description = "Writes JSON.")
  private boolean json;

  FindCommand(Console console) {
    super(console);
  }

  @Override
  ExitCode run() {
    if (limit < 1) {
      return wrong("--limit is 1 or more.");
    }
    GuidanceFilter filter = GuidanceFilter.ALL;
    try {
      filter = whom == null ? filter : filter.population(one(Population.class, whom));
      filter = tube == null ? filter : filter.tube(one(TubeKind.class, tube));
      filter = stage == null ? filter : filter.stage(one(Stage.class, stage));
    } catch (IllegalArgumentException unknown) {
      return wrong(String.valueOf(unknown.getMessage()));
    }
    Ask ask = Ask.of(String.join(" ", words)).filter(filter).limit(limit);
    return search(explain ? ask.explained() : ask);
  }

  private static <E extends Enum<E> & Worded> E one(Class<E> type, String word) {
    return Worded.find(type, word)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "`" + word + "` is none of: " + String.join(", ", Worded.words(type))));
  }

  private ExitCode search(Ask ask) {
    Tidemark tidemark = policies.tidemark();
    Loaded<EffectivePolicy> policy = policies.policy(tidemark);
    return policy.match(
        p -> {
          remark(policy.diagnostics(), json);
          return search(tidemark, p, ask);
        },
        broken -> noPolicy(broken, json));
  }

  private ExitCode search(Tidemark tidemark, EffectivePolicy policy, Ask ask) {
    Loaded<GuidanceSearch> guidance = tidemark.guidance(policy);
    return guidance.match(
        found -> {
          remark(guidance.diagnostics(), json);
          return suggest ? suggestions(found, ask.text()) : show(found, ask);
        },
        broken -> console().refuse(broken, json, ExitCode.POLICY_BROKEN));
  }

  private ExitCode suggestions(GuidanceSearch guidance, String begun) {
    List<String> lines = guidance.suggest(begun, SUGGESTIONS);
    String text = lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    console().answer(json ? SuggestionsJson.of(begun, lines, remarks()) : text);
    return lines.isEmpty() ? ExitCode.NOTHING_FOUND : ExitCode.DONE;
  }

  private ExitCode show(GuidanceSearch guidance, Ask ask) {
    Found found = guidance.find(ask);
    console().answer(json ? HitsJson.of(found, remarks()) : HitsText.of(found));
    return found.hits().isEmpty() ? ExitCode.NOTHING_FOUND : ExitCode.DONE;
  }
}
