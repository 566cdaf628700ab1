package org.tidemark;

import java.nio.file.Path;

/**
 * What came of laying a file out.
 *
 * @param file the file
 * @param changed whether it was written anew; it is not when it was laid out so already
 */
public record Tidied(Path file, boolean changed) {}
