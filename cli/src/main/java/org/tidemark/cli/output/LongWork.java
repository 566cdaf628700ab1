package org.tidemark.cli.output;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.function.LongSupplier;

/** Says now and then how far long work has come; of short work it says nothing. */
public final class LongWork {
  private static final long PAUSE = Duration.ofSeconds(2).toNanos();

  private final PrintWriter err;
  private final String what;
  private final LongSupplier clock;
  private long last;

  public LongWork(PrintWriter err, String what) {
    this(err, what, System::nanoTime);
  }

  LongWork(PrintWriter err, String what, LongSupplier clock) {
    this.err = err;
    this.what = what;
    this.clock = clock;
    this.last = clock.getAsLong();
  }

  /** So many are done. */
  public void done(int some, int all) {
    long now = clock.getAsLong();
    if (now - last >= PAUSE && some < all) {
      err.println(some + " of " + all + " " + what);
      err.flush();
      last = now;
    }
  }
}
