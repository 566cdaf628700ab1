package org.tidemark.load;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidemark.yaml.Shape;

/** How files are laid out, as the language declares their fields. */
public final class Shapes {
  private Shapes() {}

  /** The layout of a part: its fields in the order in which they are declared. */
  public static Shape of(Part part) {
    Map<String, Shape> fields = new HashMap<>();
    part.fields().forEach(f -> of(f.holds()).ifPresent(shape -> fields.put(f.name(), shape)));
    return new Shape(part.names(), fields, List.of());
  }

  private static Optional<Shape> of(Holds holds) {
    if (holds instanceof Holds.Group group) {
      return Optional.of(of(group.part()));
    }
    if (holds instanceof Holds.ListOf list) {
      return of(list.item()).map(Shape::ofEach);
    }
    if (holds instanceof Holds.Named named) {
      return of(named.each()).map(Shape::ofEach);
    }
    return holds instanceof Holds.Either either
        ? either.those().stream().flatMap(h -> of(h).stream()).findFirst()
        : Optional.empty();
  }
}
