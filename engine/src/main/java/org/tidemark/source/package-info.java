/** Texts, places in texts, and what there is to say about them. */
@NullMarked
package org.tidemark.source;

import org.jspecify.annotations.NullMarked;
