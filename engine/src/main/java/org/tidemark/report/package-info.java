/** Anything above as text and as JSON. */
@NullMarked
package org.tidemark.report;

import org.jspecify.annotations.NullMarked;
