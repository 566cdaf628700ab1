package org.tidemark.count;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tidemark.decide.DoesNotCount;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Counts;
import org.tidemark.model.ListKind;

/** What stands in a list and does not count, or may not, each reason once. */
final class NotCounted {
  private final EffectivePolicy policy;
  private final String finding;
  private final String one;
  private final Set<DoesNotCount> all = new LinkedHashSet<>();

  NotCounted(EffectivePolicy policy, String list, String finding) {
    this.policy = policy;
    this.finding = finding;
    this.one = policy.vocabulary().list(list).map(ListKind::one).orElse(list);
  }

  void because(Item item, String because) {
    all.add(new DoesNotCount(finding, item.named(one), because, List.of()));
  }

  /** By a line of the policy; when too little is known of the item, that is said first. */
  void by(Counts.Criterion criterion, Item item, boolean certain) {
    String open = certain ? "" : "Not all that it needs is known. ";
    all.add(
        new DoesNotCount(
            finding,
            item.named(one),
            open + policy.fill(criterion.because()),
            criterion.backing().sources()));
  }

  List<DoesNotCount> all() {
    return new ArrayList<>(all);
  }
}
