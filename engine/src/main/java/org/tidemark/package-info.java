/** The one door for people who embed Tidemark. */
@NullMarked
package org.tidemark;

import org.jspecify.annotations.NullMarked;
