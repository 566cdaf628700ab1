/** Anything above as text. */
package org.tidemark.report;
