/**
 * The rules of the house as tests, for every module to use; data where an outsider may want to read
 * it.
 */
@NullMarked
package org.tidemark.architecture;

import org.jspecify.annotations.NullMarked;
