package org.tidemark.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/** Collects what there is to say during one reading, so that all of it is reported together. */
public final class Problems {
  /** More than anybody reads in one go; what lies beyond shows when these are mended. */
  private static final int MOST = 1_000;

  private final Set<Diagnostic> found = new LinkedHashSet<>();
  private boolean anyError;

  /** Takes note of it. The first error is always kept, however much was found before it. */
  public void add(Diagnostic diagnostic) {
    boolean firstError = diagnostic.severity() == Severity.ERROR && !anyError;
    if (found.size() < MOST || firstError) {
      found.add(diagnostic);
    }
    anyError |= firstError;
  }

  public void addAll(Iterable<Diagnostic> diagnostics) {
    diagnostics.forEach(this::add);
  }

  /**
   * The value of a part that was read elsewhere, keeping its remarks; or the fallback, keeping its
   * errors.
   */
  public <T> T keep(Loaded<T> part, Supplier<T> whenBroken) {
    addAll(part.diagnostics());
    return part.match(value -> value, errors -> whenBroken.get());
  }

  public boolean anyError() {
    return anyError;
  }

  /** Everything found, by file and place. */
  public List<Diagnostic> sorted() {
    List<Diagnostic> all = new ArrayList<>(found);
    all.sort(
        Comparator.comparing((Diagnostic d) -> d.at().source().name())
            .thenComparing(d -> d.at().start())
            .thenComparing(Diagnostic::severity));
    return List.copyOf(all);
  }

  /** The value when no error was found; otherwise everything that was. */
  public <T> Loaded<T> conclude(Supplier<T> value) {
    return anyError() ? Loaded.broken(sorted()) : Loaded.good(value.get(), sorted());
  }
}
