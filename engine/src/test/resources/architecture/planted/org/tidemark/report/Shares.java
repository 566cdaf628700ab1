package org.tidemark.report;

/** A share may be a double where nothing is compared with a limit. */
record Shares(double part) {}
