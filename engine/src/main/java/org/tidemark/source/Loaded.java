package org.tidemark.source;

import java.util.List;
import java.util.function.Function;

/**
 * What came of reading something: either all of it, with remarks, or nothing, with the reasons.
 *
 * @param <T> what was to be read
 */
public sealed interface Loaded<T> {

  /** Remarks, or the reasons why nothing could be read, in the order of their places. */
  List<Diagnostic> diagnostics();

  /** Answers with one of two functions. */
  <R> R match(
      Function<? super T, ? extends R> good, Function<List<Diagnostic>, ? extends R> broken);

  static <T> Loaded<T> good(T value) {
    return new Good<>(value, List.of());
  }

  static <T> Loaded<T> good(T value, List<Diagnostic> remarks) {
    return new Good<>(value, remarks);
  }

  static <T> Loaded<T> broken(Diagnostic problem) {
    return new Broken<>(List.of(problem));
  }

  static <T> Loaded<T> broken(List<Diagnostic> problems) {
    return new Broken<>(problems);
  }

  /**
   * The whole thing.
   *
   * @param value what was read
   * @param diagnostics warnings and notices; never an error
   * @param <T> what was read
   */
  record Good<T>(T value, List<Diagnostic> diagnostics) implements Loaded<T> {
    public Good {
      diagnostics = List.copyOf(diagnostics);
      if (diagnostics.stream().anyMatch(d -> d.severity() == Severity.ERROR)) {
        throw new IllegalArgumentException("an error never comes with a value");
      }
    }

    @Override
    public <R> R match(
        Function<? super T, ? extends R> good, Function<List<Diagnostic>, ? extends R> broken) {
      return good.apply(value);
    }
  }

  /**
   * Nothing, and why.
   *
   * @param diagnostics at least one error
   * @param <T> what was to be read
   */
  record Broken<T>(List<Diagnostic> diagnostics) implements Loaded<T> {
    public Broken {
      diagnostics = List.copyOf(diagnostics);
      if (diagnostics.stream().noneMatch(d -> d.severity() == Severity.ERROR)) {
        throw new IllegalArgumentException("nothing was read and no error says why");
      }
    }

    @Override
    public <R> R match(
        Function<? super T, ? extends R> good, Function<List<Diagnostic>, ? extends R> broken) {
      return broken.apply(diagnostics);
    }
  }
}
