package org.tidemark.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class OrderedTest {
  private static final List<String> MANY =
      IntStream.range(0, 40).mapToObj(n -> "n" + (n * 7) % 40).toList();

  @Test
  void aSetKeepsTheOrderOfWriting() {
    List<String> source = new ArrayList<>(MANY);
    Set<String> copy = Ordered.set(source);
    source.clear();
    assertEquals(MANY, List.copyOf(copy));
    assertThrows(UnsupportedOperationException.class, () -> copy.remove("n0"));
  }

  @Test
  void aMapKeepsTheOrderOfWriting() {
    Map<String, Integer> source = new LinkedHashMap<>();
    MANY.forEach(n -> source.put(n, n.length()));
    Map<String, Integer> copy = Ordered.map(source);
    source.clear();
    assertEquals(MANY, List.copyOf(copy.keySet()));
    assertThrows(UnsupportedOperationException.class, () -> copy.remove("n0"));
  }
}
