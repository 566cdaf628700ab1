/** Tests of the claims about policies. */
@NullMarked
package org.tidemark.prove;

import org.jspecify.annotations.NullMarked;
