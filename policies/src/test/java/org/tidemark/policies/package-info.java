/** Loads what is shipped, and two published structures, and runs their worked cases. */
@NullMarked
package org.tidemark.policies;

import org.jspecify.annotations.NullMarked;
