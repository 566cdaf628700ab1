package org.tidemark.yaml;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A field or a list item that stands on lines of its own, and the comments that belong to it. */
final class Slot {
  final int start;
  final int line;
  final int column;
  final YamlNode value;
  final @Nullable Slot parent;
  final boolean item;
  final List<String> before = new ArrayList<>();
  final List<String> after = new ArrayList<>();
  String beside = "";

  Slot(int start, YamlNode place, YamlNode value, @Nullable Slot parent) {
    this.start = start;
    this.line = place.span().source().lineAt(start);
    this.column = place.span().source().columnAt(start);
    this.value = value;
    this.parent = parent;
    this.item = place instanceof YamlList;
  }

  /**
   * What stands before the first field of a list item stands before the item: there it is laid out.
   */
  Slot outermost() {
    Slot in = parent;
    boolean first =
        in != null && in.item && in.value instanceof YamlMap map && map.span().start() == start;
    return first && in != null ? in.outermost() : this;
  }

  /** Whether anything stands there but blank lines. */
  boolean hasComment() {
    return before.stream().anyMatch(line -> !line.isEmpty()) || hasCommentBehind();
  }

  /** Whether one stands beside it or below it. */
  boolean hasCommentBehind() {
    return !after.isEmpty() || !beside.isEmpty();
  }

  /** A blank line, once, and never twice in a row. */
  void blank() {
    if (before.isEmpty() || !before.get(before.size() - 1).isEmpty()) {
      before.add("");
    }
  }
}
