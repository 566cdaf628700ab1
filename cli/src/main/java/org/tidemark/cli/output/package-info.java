/** Writing to the streams that the program hands in, and how a run ends. */
@NullMarked
package org.tidemark.cli.output;

import org.jspecify.annotations.NullMarked;
