/**
 * Questions over all findings at once: claims about a policy, each proved, refuted with a case, or
 * undecided.
 */
@NullMarked
package org.tidemark.prove;

import org.jspecify.annotations.NullMarked;
