/** The only place that writes to a stream handed in by the program. */
@NullMarked
package org.tidemark.cli.output;

import org.jspecify.annotations.NullMarked;
