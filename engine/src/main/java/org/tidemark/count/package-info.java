/** What was written of a tube more than once, reduced to findings before any rule is looked at. */
@NullMarked
package org.tidemark.count;

import org.jspecify.annotations.NullMarked;
