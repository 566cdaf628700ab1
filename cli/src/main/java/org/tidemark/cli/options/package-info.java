/** Options that verbs share. */
@NullMarked
package org.tidemark.cli.options;

import org.jspecify.annotations.NullMarked;
