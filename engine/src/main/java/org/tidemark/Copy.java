package org.tidemark;

import java.nio.file.Path;
import java.util.Optional;
import org.tidemark.yaml.YamlNode;

/**
 * A policy file that was found.
 *
 * @param tree what it holds
 * @param file where it lies; empty for one that is shipped
 */
record Copy(YamlNode tree, Optional<Path> file) {
  /** Whether the tests that ship it have already looked its citations up. */
  boolean shipped() {
    return file.isEmpty();
  }
}
