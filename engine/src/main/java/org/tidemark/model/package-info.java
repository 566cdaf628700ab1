/** What a policy means: immutable values that do no reading or writing. */
@NullMarked
package org.tidemark.model;

import org.jspecify.annotations.NullMarked;
