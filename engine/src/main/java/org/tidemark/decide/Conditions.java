package org.tidemark.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tidemark.layer.Alternatives;
import org.tidemark.layer.Atom;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Condition;

/** Turns conditions into boxes. */
final class Conditions {
  private Conditions() {}

  static Atom atom(Condition.Options options) {
    return new Atom(options.finding(), options.options(), Optional.empty(), false);
  }

  /** Every atom of a condition. */
  static List<Atom> atoms(EffectivePolicy policy, Condition condition) {
    return Alternatives.of(policy, condition).stream().flatMap(List::stream).toList();
  }

  /** The boxes in which a condition holds; none if it never can. */
  static List<Box> boxes(EffectivePolicy policy, Condition condition, CellSpace space) {
    List<Box> boxes = new ArrayList<>();
    Alternatives.of(policy, condition).forEach(a -> box(a, space).ifPresent(boxes::add));
    return List.copyOf(boxes);
  }

  private static Optional<Box> box(List<Atom> atoms, CellSpace space) {
    Map<Integer, Long> cells = new TreeMap<>();
    for (Atom atom : atoms) {
      int position = space.position(atom.finding()).orElseThrow();
      cells.merge(position, space.cells(position).in(atom), (a, b) -> a & b);
    }
    return Box.of(cells);
  }
}
