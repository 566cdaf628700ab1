package org.tidemark.print;

import java.util.ArrayList;
import java.util.List;
import org.tidemark.source.Located;

/** Which values and lists a template names, and where. */
final class Uses {
  private final List<Located<String>> unguarded = new ArrayList<>();

  void add(Refs.Ref ref, Scope scope) {
    if (ref.opens("values")) {
      ref.part()
          .filter(name -> !scope.sure().contains(name))
          .ifPresent(name -> unguarded.add(Located.of(name, ref.span())));
    }
  }

  /** Values named where no #if makes sure that the policy states them. */
  List<Located<String>> unguarded() {
    return List.copyOf(unguarded);
  }
}
