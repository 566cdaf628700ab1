package org.tidemark.layer;

import java.util.ArrayList;
import java.util.List;
import org.tidemark.model.Condition;

/** Whether two conditions can hold of the same patient at the same time. */
final class Together {
  private Together() {}

  static boolean canHold(EffectivePolicy policy, Condition one, Condition other) {
    for (List<Atom> a : Alternatives.of(policy, one)) {
      for (List<Atom> b : Alternatives.of(policy, other)) {
        List<Atom> both = new ArrayList<>(a);
        both.addAll(b);
        if (Readings.consistent(policy, both)) {
          return true;
        }
      }
    }
    return false;
  }
}
