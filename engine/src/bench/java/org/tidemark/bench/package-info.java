/** What takes how long; run by profile bench, never part of what is shipped. */
@NullMarked
package org.tidemark.bench;

import org.jspecify.annotations.NullMarked;
