package org.tidemark.yaml;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tidemark.source.SourceText;
import org.tidemark.source.Span;

/** Finds the fields and items of a text and gives each comment to one of them. */
final class Slots {
  private final SourceText source;
  private final IdentityHashMap<YamlNode, Slot> byValue = new IdentityHashMap<>();
  private final List<Slot> slots = new ArrayList<>();
  private final TreeMap<Integer, Span> texts = new TreeMap<>();
  private final List<String> comments = new ArrayList<>();

  private Slots(SourceText source) {
    this.source = source;
  }

  static Slots in(YamlNode root) {
    Slots slots = new Slots(root.span().source());
    slots.walk(root, null);
    slots.scan();
    return slots;
  }

  /** The place of a value, if it has lines of its own. */
  Optional<Slot> of(YamlNode value) {
    return Optional.ofNullable(byValue.get(value));
  }

  /** Comments of a text that has no field and no item. */
  List<String> first() {
    return slots.isEmpty() ? comments() : List.of();
  }

  /** Whether a comment stands within a value, which then needs lines of its own. */
  boolean hasComments(YamlNode value) {
    return slots.stream()
        .filter(s -> s.value != value && within(s, value))
        .anyMatch(Slot::hasComment);
  }

  /** The same, but for those above its first field: they are laid out above the value. */
  boolean hasComments(YamlNode value, YamlNode first) {
    return slots.stream()
        .filter(s -> s.value != value && within(s, value))
        .anyMatch(s -> s.value == first ? s.hasCommentBehind() : s.hasComment());
  }

  private static boolean within(Slot slot, YamlNode value) {
    return slot.start >= value.span().start() && slot.start < value.span().end();
  }

  /** All comments, in the order of the text. */
  List<String> comments() {
    return List.copyOf(comments);
  }

  static boolean isFlow(YamlNode node) {
    char first = node.span().text().isEmpty() ? ' ' : node.span().text().charAt(0);
    return !(node instanceof YamlText) && (first == '{' || first == '[');
  }

  private void walk(YamlNode node, @Nullable Slot parent) {
    if (node instanceof YamlText text) {
      texts.put(text.span().start(), text.span());
    } else if (node instanceof YamlMap map) {
      for (YamlMap.Entry entry : map.entries()) {
        texts.put(entry.key().span().start(), entry.key().span());
        walk(entry.value(), slot(map, entry.key().span().start(), entry.value(), parent));
      }
    } else if (node instanceof YamlList list) {
      for (YamlNode item : list.items()) {
        walk(item, slot(list, dash(item), item, parent));
      }
    }
  }

  private int dash(YamlNode item) {
    int at = item.span().start() - 1;
    while (at > 0 && source.text().charAt(at) != '-') {
      at--;
    }
    return at;
  }

  private @Nullable Slot slot(YamlNode in, int start, YamlNode value, @Nullable Slot parent) {
    if (isFlow(in)) {
      return parent;
    }
    Slot slot = new Slot(start, in, value, parent);
    slots.add(slot);
    byValue.put(value, slot);
    return slot;
  }

  private void scan() {
    boolean blank = false;
    for (int line = 1; line <= source.lineCount(); line++) {
      int start = source.startOfLine(line);
      int hash = hash(start, source.endOfLine(line));
      String before = source.text().substring(start, hash < 0 ? source.endOfLine(line) : hash);
      if (blank && !before.isBlank()) {
        blankBefore(line);
      }
      if (hash >= 0) {
        comment(source.span(hash, source.endOfLine(line)), before.isBlank(), blank);
      }
      blank = hash < 0 && before.isBlank() && !within(start);
    }
  }

  private boolean within(int offset) {
    Map.Entry<Integer, Span> text = texts.floorEntry(offset);
    return text != null && offset < text.getValue().end();
  }

  private int hash(int from, int to) {
    for (int i = from; i < to; i++) {
      boolean free = i == from || Character.isWhitespace(source.text().charAt(i - 1));
      if (source.text().charAt(i) == '#' && free && !within(i)) {
        return i;
      }
    }
    return -1;
  }

  private void blankBefore(int line) {
    slots.stream()
        .filter(s -> s.line == line)
        .findFirst()
        .map(Slot::outermost)
        .ifPresent(Slot::blank);
  }

  private void comment(Span at, boolean alone, boolean blank) {
    String text = at.text().stripTrailing();
    comments.add(text);
    Slot last = null;
    Slot next = null;
    for (Slot slot : slots) {
      if (slot.start < at.start()) {
        last = slot;
      } else if (next == null) {
        next = slot;
      }
    }
    boolean inFlow = last != null && isFlow(last.value) && at.start() < last.value.span().end();
    if (last != null && inFlow) {
      last.before.add(text);
    } else if (!alone && last != null && last.line == at.line() && last.beside.isEmpty()) {
      last.beside = text;
    } else {
      alone(text, at.column(), blank, last, next);
    }
  }

  private static void alone(
      String text, int column, boolean blank, @Nullable Slot last, @Nullable Slot next) {
    Slot owner = last;
    int floor = next == null ? 0 : next.column;
    while (owner != null && owner.column > column) {
      owner = owner.parent;
    }
    if (owner != null && owner.column > floor) {
      owner.after.add(text);
    } else if (next != null) {
      Slot before = next.outermost();
      if (blank) {
        before.blank();
      }
      before.before.add(text);
    } else if (last != null) {
      last.after.add(text);
    }
  }
}
