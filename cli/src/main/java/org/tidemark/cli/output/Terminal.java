package org.tidemark.cli.output;

import org.jspecify.annotations.Nullable;

/** A person at a keyboard. */
public interface Terminal {
  /** The next line that is typed, without its end; null when there is no more. */
  @Nullable String readLine();
}
