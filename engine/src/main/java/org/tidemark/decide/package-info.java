/** From findings to an outcome, its reasons, and what is still needed. */
@NullMarked
package org.tidemark.decide;

import org.jspecify.annotations.NullMarked;
