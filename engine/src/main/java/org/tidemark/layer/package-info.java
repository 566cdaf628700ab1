/** Floor, hospital, unit and individual plan: combined, with who said what kept. */
@NullMarked
package org.tidemark.layer;

import org.jspecify.annotations.NullMarked;
