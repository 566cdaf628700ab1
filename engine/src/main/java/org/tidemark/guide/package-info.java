/** Guidance, indexed and searched; a hit is a citation. */
@NullMarked
package org.tidemark.guide;

import org.jspecify.annotations.NullMarked;
