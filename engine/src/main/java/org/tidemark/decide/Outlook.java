package org.tidemark.decide;

/**
 * What a region of cases comes to.
 *
 * @param possible the states that its cases come to
 * @param firing the rules that fire in all of them
 */
record Outlook(Possible possible, Firing firing) {}
