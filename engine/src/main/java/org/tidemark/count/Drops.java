package org.tidemark.count;

import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Counts;

/** What the policy itself refuses to count. */
final class Drops {
  private final EffectivePolicy policy;
  private final NotCounted notCounted;

  Drops(EffectivePolicy policy, NotCounted notCounted) {
    this.policy = policy;
    this.notCounted = notCounted;
  }

  /** Whether the policy drops an item; every reason is said, and whether it is certain. */
  Truth dropped(String list, Item item) {
    Truth dropped = Truth.NO;
    for (Counts.Criterion drop : policy.counts().drops()) {
      if (drop.list().equals(list)) {
        Truth holds = drop.given().accept(new Fits(policy, item.written()));
        if (holds != Truth.NO) {
          notCounted.by(drop, item, holds == Truth.YES);
        }
        dropped = dropped.or(holds);
      }
    }
    return dropped;
  }
}
