/** The program: its way in, its root command and its exit codes. */
@NullMarked
package org.tidemark.cli;

import org.jspecify.annotations.NullMarked;
