/** One class a verb: read, call, render. */
@NullMarked
package org.tidemark.cli.command;

import org.jspecify.annotations.NullMarked;
