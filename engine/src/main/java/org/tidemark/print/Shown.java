package org.tidemark.print;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.layer.EffectivePolicy;

/** A policy as it holds, item by item, each with what every layer says of it and where. */
public final class Shown {
  private final EffectivePolicy policy;
  private final List<Map<String, String>> texts = new ArrayList<>();
  private final List<Map<String, WhereWritten.Item>> items = new ArrayList<>();

  private Shown(EffectivePolicy policy) {
    this.policy = policy;
    Deque<EffectivePolicy> levels = new ArrayDeque<>();
    Optional<EffectivePolicy> level = Optional.of(policy);
    while (level.isPresent()) {
      levels.addFirst(level.get());
      level = level.get().below();
    }
    levels.forEach(l -> texts.add(Written.by(l)));
    policy.parts().forEach(p -> items.add(WhereWritten.in(p, policy)));
  }

  /**
   * Something that the policy says.
   *
   * @param kind what sort of thing it is
   * @param name its name; empty where there is only one of its kind
   * @param holds how it holds
   * @param says what each layer that speaks of it says, the lowest first
   */
  public record Entry(String kind, String name, String holds, List<Say> says) {
    public Entry {
      says = List.copyOf(says);
    }
  }

  /**
   * What one layer says.
   *
   * @param layer the layer's name
   * @param where where it is written
   * @param text how it holds with that layer on top
   */
  public record Say(String layer, String where, String text) {}

  /** Everything that the policy says, in the order of the sign-off sheet. */
  public static List<Entry> of(EffectivePolicy policy) {
    Shown shown = new Shown(policy);
    return Written.by(policy).keySet().stream().map(shown::entry).toList();
  }

  private Entry entry(String key) {
    List<Say> says = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      String layer = policy.layers().get(i).name();
      String text = texts.get(i).getOrDefault(key, "");
      Optional.ofNullable(items.get(i).get(key))
          .ifPresent(item -> says.add(new Say(layer, item.place().toString(), text)));
    }
    String holds = texts.get(texts.size() - 1).getOrDefault(key, "");
    if (says.isEmpty()) {
      says.add(new Say(policy.name(), policy.header().place().toString(), holds));
    }
    Optional<WhereWritten.Item> named =
        items.stream().filter(i -> i.containsKey(key)).findFirst().map(i -> i.get(key));
    return new Entry(
        named.map(WhereWritten.Item::kind).orElse(key),
        named.map(WhereWritten.Item::name).orElse(""),
        holds,
        says);
  }
}
