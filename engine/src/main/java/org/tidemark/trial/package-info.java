/** Worked cases: run, cover, explain, and make new ones for teaching. */
@NullMarked
package org.tidemark.trial;

import org.jspecify.annotations.NullMarked;
