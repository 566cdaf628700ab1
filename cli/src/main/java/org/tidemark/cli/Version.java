package org.tidemark.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.IVersionProvider;

/** The version that the jar's manifest states. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {
      "tidemark " + stated(Version.class.getPackage().getImplementationVersion())
    };
  }

  /** Classes that run outside the jar have no manifest to read. */
  static String stated(@Nullable String manifest) {
    return manifest == null ? "(unpackaged)" : manifest;
  }
}
