package org.tidemark.decide;

/** Planted, to be found; never compiled. */
final class Careless {
  int guesses(String text) {
    double share = 0.5;
    try {
      return (int) (share * Integer.parseInt(text));
    } catch (RuntimeException any) {
      return 0;
    } catch (Exception any) {
      return 1;
    } catch (IllegalStateException | java.lang.Error any) {
      return 2;
    } catch (Throwable any) {
      return 3;
    }
  }

  int named(String text) {
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException named) {
      return 4;
    }
  }

  void sixtyLines() {
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
  }

  void sixtyOneLines() {
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
    guesses("");
  }
}
