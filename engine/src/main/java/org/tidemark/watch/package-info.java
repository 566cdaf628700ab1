/** A tube's events: what has lapsed since its last check, and what is due when. */
@NullMarked
package org.tidemark.watch;

import org.jspecify.annotations.NullMarked;
