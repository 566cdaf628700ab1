/** View records to HTML and PDF cards, and guidance filled with a policy's values. */
@NullMarked
package org.tidemark.print;

import org.jspecify.annotations.NullMarked;
