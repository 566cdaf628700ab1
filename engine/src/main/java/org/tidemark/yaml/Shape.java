package org.tidemark.yaml;

import java.util.List;
import java.util.Map;

/**
 * How a part of a file is laid out: the order of its fields.
 *
 * @param order field names in their order; a name that is not here stays behind the one before it
 * @param fields the shapes of fields
 * @param each the shape of all other fields, and of list items; empty for none
 */
public record Shape(List<String> order, Map<String, Shape> fields, List<Shape> each) {
  /** Nothing is known of it. */
  public static final Shape ANY = new Shape(List.of(), Map.of(), List.of());

  public Shape {
    order = List.copyOf(order);
    fields = Map.copyOf(fields);
    each = List.copyOf(each);
  }

  /** Named things or list items, all of one shape. */
  public static Shape ofEach(Shape shape) {
    return new Shape(List.of(), Map.of(), List.of(shape));
  }

  Shape of(String field) {
    return fields.getOrDefault(field, item());
  }

  Shape item() {
    return each.isEmpty() ? ANY : each.get(0);
  }
}
