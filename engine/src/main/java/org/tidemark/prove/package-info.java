/** Claims about a policy over all findings at once: proved, refuted or undecided. */
@NullMarked
package org.tidemark.prove;

import org.jspecify.annotations.NullMarked;
