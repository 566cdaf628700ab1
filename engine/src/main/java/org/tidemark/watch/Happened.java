package org.tidemark.watch;

import org.tidemark.model.EventKind;
import org.tidemark.model.TubeRecord;

/**
 * An event, and the minutes between which it happened.
 *
 * @param kind what happened
 * @param from the first minute in which it may have happened
 * @param to the last
 * @param event the event as it was written
 */
record Happened(EventKind kind, long from, long to, TubeRecord.Event event) {}
