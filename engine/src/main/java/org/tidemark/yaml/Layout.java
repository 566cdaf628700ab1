package org.tidemark.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Writes a tree in one layout: known fields in one order, two spaces a level, short things without
 * prose in braces and brackets, everything else one field a line, and every comment beside what it
 * stood at.
 */
public final class Layout {
  private static final int WIDTH = 120;
  private static final String LEVEL = "  ";

  private final Slots slots;
  private final StringBuilder out = new StringBuilder();

  /** Where a text ended that takes the blank lines behind it for its own. */
  private int keptEnd = -1;

  private Layout(Slots slots) {
    this.slots = slots;
  }

  /** The tree's text in that layout. */
  public static String of(YamlNode root, Shape shape) {
    Layout layout = new Layout(Slots.in(root));
    layout.slots.first().forEach(line -> layout.line("", line));
    if (root instanceof YamlMap map && !map.entries().isEmpty()) {
      layout.map(map, "", "", shape);
    } else if (root instanceof YamlList list && !list.items().isEmpty()) {
      layout.list(list, "", shape);
    } else {
      layout.line("", flow(root, shape));
    }
    return layout.out.toString();
  }

  /** Every comment of a tree's text, for whoever must know that none was lost. */
  public static List<String> comments(YamlNode root) {
    return Slots.in(root).comments().stream().sorted().toList();
  }

  private void line(String indent, String text) {
    out.append(text.isEmpty() ? "" : indent + text).append('\n');
  }

  /** The fields of a map; the first stands behind a dash if there is one. */
  private void map(YamlMap map, String indent, String dash, Shape shape) {
    boolean first = true;
    for (YamlMap.Entry entry : ordered(map, shape)) {
      String name = entry.key().text();
      boolean beside = first && !dash.isEmpty();
      if (!beside) {
        before(entry.value(), indent);
      }
      String head = (beside ? dash : indent) + Scalar.name(entry.key(), false) + ":";
      value(entry.value(), head, indent, shape.of(name));
      after(entry.value(), indent);
      first = false;
    }
  }

  private void list(YamlList list, String indent, Shape shape) {
    for (YamlNode item : list.items()) {
      before(item, indent);
      if (item instanceof YamlMap map && !isEmpty(map)) {
        item(map, indent, shape.item());
      } else {
        value(item, indent + "-", indent, shape.item());
      }
      after(item, indent);
    }
  }

  /** An item of fields: its first field stands beside the dash, what stood before it above. */
  private void item(YamlMap map, String indent, Shape shape) {
    YamlNode first = ordered(map, shape).get(0).value();
    if (isShort(map, indent + "-", shape) && !slots.hasComments(map, first)) {
      before(first, indent);
      out.append(indent).append("- ").append(flow(map, shape)).append(beside(map)).append('\n');
      return;
    }
    String beside = slots.of(map).map(slot -> slot.beside).orElse("");
    if (!beside.isEmpty()) {
      line(indent, beside);
    }
    before(first, indent);
    map(map, indent + LEVEL, indent + "- ", shape);
  }

  private String beside(YamlNode value) {
    String beside = slots.of(value).map(slot -> slot.beside).orElse("");
    return beside.isEmpty() ? "" : "  " + beside;
  }

  /** The comments above something. A file, and a thing's first part, begin without a blank line. */
  private void before(YamlNode value, String indent) {
    for (String line : slots.of(value).map(slot -> slot.before).orElse(List.of())) {
      if (!line.isEmpty() || mayHaveBlank()) {
        line(indent, line);
      }
    }
  }

  private boolean mayHaveBlank() {
    int end = out.length();
    return end > 1 && end != keptEnd && out.charAt(end - 2) != '\n' && !opensSomething(end);
  }

  private boolean opensSomething(int end) {
    return out.charAt(end - 2) == ':' || out.charAt(end - 2) == '-';
  }

  private void after(YamlNode value, String indent) {
    slots.of(value).ifPresent(slot -> slot.after.forEach(line -> line(indent, line)));
  }

  private void value(YamlNode value, String head, String indent, Shape shape) {
    String beside = slots.of(value).map(slot -> slot.beside).orElse("");
    String end = beside(value) + "\n";
    String deeper = indent + LEVEL;
    if (value instanceof YamlText text && text.style() == YamlText.Style.BLOCK) {
      out.append(head).append(' ').append(Scalar.block(text, deeper)).append(end);
      keptEnd = Scalar.keepsItsEnd(text) ? out.length() : keptEnd;
    } else if (value instanceof YamlText text && text.text().indexOf('\n') >= 0) {
      out.append(head).append(text.text().endsWith("\n") ? " |" : " |-").append(end);
      text.text().lines().forEach(each -> line(deeper, each));
    } else if (value instanceof YamlText text) {
      out.append(head).append(' ').append(Scalar.before(beside, text)).append(end);
    } else if (isEmpty(value) || (isShort(value, head, shape) && !slots.hasComments(value))) {
      out.append(head).append(' ').append(flow(value, shape)).append(end);
    } else if (value instanceof YamlMap map) {
      out.append(head).append(end);
      map(map, deeper, "", shape);
    } else {
      out.append(head).append(end);
      list((YamlList) value, deeper, shape);
    }
  }

  /** Known fields in their order; the others stay behind the field that they stood behind. */
  private static List<YamlMap.Entry> ordered(YamlMap map, Shape shape) {
    Map<YamlMap.Entry, Integer> rank = new HashMap<>();
    int last = -1;
    for (YamlMap.Entry entry : map.entries()) {
      int known = shape.order().indexOf(entry.key().text());
      last = known < 0 ? last : known;
      rank.put(entry, last);
    }
    List<YamlMap.Entry> sorted = new ArrayList<>(map.entries());
    sorted.sort(Comparator.comparing(entry -> rank.getOrDefault(entry, 0)));
    return sorted;
  }

  private static boolean isShort(YamlNode value, String head, Shape shape) {
    return !hasProse(value) && head.length() + 1 + flow(value, shape).length() <= WIDTH;
  }

  private static boolean isEmpty(YamlNode value) {
    return value instanceof YamlList list
        ? list.items().isEmpty()
        : value instanceof YamlMap map && map.entries().isEmpty();
  }

  private static boolean hasProse(YamlNode node) {
    if (node instanceof YamlText text) {
      return text.style() == YamlText.Style.BLOCK
          || text.text().chars().anyMatch(Character::isWhitespace);
    }
    return node instanceof YamlList list
        ? list.items().stream().anyMatch(Layout::hasProse)
        : ((YamlMap) node)
            .entries().stream().anyMatch(e -> hasProse(e.key()) || hasProse(e.value()));
  }

  private static String flow(YamlNode node, Shape shape) {
    if (node instanceof YamlText text) {
      return Scalar.of(text, true);
    }
    if (node instanceof YamlList list) {
      return list.items().stream()
          .map(item -> flow(item, shape.item()))
          .collect(Collectors.joining(", ", "[", "]"));
    }
    return ordered((YamlMap) node, shape).stream()
        .map(e -> Scalar.name(e.key(), true) + ": " + flow(e.value(), shape.of(e.key().text())))
        .collect(Collectors.joining(", ", "{", "}"));
  }
}
