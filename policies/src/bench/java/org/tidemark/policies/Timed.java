package org.tidemark.policies;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;

/**
 * How long something took, over several runs.
 *
 * @param middle the median, in microseconds
 * @param worst the longest, in microseconds
 * @param said what it came to; the same in every run
 */
record Timed(double middle, double worst, String said) {
  /** Runs something a few times unmeasured, then measures it. */
  static Timed of(int unmeasured, int measured, Supplier<String> what) {
    String said = what.get();
    for (int i = 1; i < unmeasured; i++) {
      same(said, what.get());
    }
    double[] micros = new double[measured];
    for (int i = 0; i < measured; i++) {
      long from = System.nanoTime();
      String now = what.get();
      micros[i] = (System.nanoTime() - from) / 1_000.0;
      same(said, now);
    }
    Arrays.sort(micros);
    return new Timed(micros[measured / 2], micros[measured - 1], said);
  }

  private static void same(String said, String now) {
    if (!now.equals(said)) {
      throw new IllegalStateException(now + ", and before " + said);
    }
  }

  /** Once, for what takes long. */
  static Timed once(Supplier<String> what) {
    long from = System.nanoTime();
    String said = what.get();
    double micros = (System.nanoTime() - from) / 1_000.0;
    return new Timed(micros, micros, said);
  }

  /** The median in the unit that suits it. */
  String words() {
    return words(middle);
  }

  static String words(double micros) {
    if (micros < 1_000) {
      return String.format(Locale.ROOT, "%.1f us", micros);
    }
    return micros < 1_000_000
        ? String.format(Locale.ROOT, "%.1f ms", micros / 1_000)
        : String.format(Locale.ROOT, "%.1f s", micros / 1_000_000);
  }

  /** How many times longer the other took. */
  String timesFasterThan(Timed other) {
    return String.format(Locale.ROOT, "%.1f", other.middle / middle);
  }
}
