/** Checks of the guidance, the words and the search over them. */
@NullMarked
package org.tidemark.content;

import org.jspecify.annotations.NullMarked;
