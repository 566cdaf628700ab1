package org.tidemark.cli.options;

import org.jspecify.annotations.Nullable;
import org.tidemark.Tidemark;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.source.Loaded;
import picocli.CommandLine.Option;

/** Which policy, and where a hospital keeps its own. */
public final class PolicyOptions extends FolderOptions {
  @Option(
      names = "--policy",
      paramLabel = "NAME|PATH",
      description = {
        "A name from the verb policies, or the path of a policy's file or folder.",
        "Without it: the invented hospital's policy that is shipped as an example."
      })
  private @Nullable String policy;

  /** The policy that is meant. */
  public Loaded<EffectivePolicy> policy(Tidemark tidemark) {
    return policy == null ? tidemark.demo() : tidemark.policy(policy);
  }
}
