/** YAML to a small sealed tree with places; scalars stay text. */
@NullMarked
package org.tidemark.yaml;

import org.jspecify.annotations.NullMarked;
