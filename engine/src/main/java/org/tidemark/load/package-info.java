/** From tree to model: types, units, suggestions and every check on save. */
@NullMarked
package org.tidemark.load;

import org.jspecify.annotations.NullMarked;
