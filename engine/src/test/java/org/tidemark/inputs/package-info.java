/** Tests of everything that a file may hold and a program must not believe. */
@NullMarked
package org.tidemark.inputs;

import org.jspecify.annotations.NullMarked;
