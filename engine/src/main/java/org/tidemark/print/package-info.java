/** View records to HTML and PDF cards. */
@NullMarked
package org.tidemark.print;

import org.jspecify.annotations.NullMarked;
