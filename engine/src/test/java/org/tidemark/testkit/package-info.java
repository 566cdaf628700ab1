/** Helpers that tests of every module share. */
@NullMarked
package org.tidemark.testkit;

import org.jspecify.annotations.NullMarked;
