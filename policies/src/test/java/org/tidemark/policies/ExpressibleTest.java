package org.tidemark.policies;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.tidemark.model.EventKind;

/**
 * Everything that the project's lists ask the language to say is said here, piece by piece, and
 * does something: an answer, a lapse, a refusal. The lists stand in files that anybody can read.
 */
class ExpressibleTest {
  private static final List<Expressible.Entry> ENTRIES = Expressible.entries();

  @TestFactory
  Stream<DynamicContainer> everyPieceDoesWhatItSays() {
    return ENTRIES.stream()
        .map(
            e ->
                DynamicContainer.dynamicContainer(
                    e.id(),
                    e.parts().stream()
                        .map(p -> DynamicTest.dynamicTest(p.name(), () -> holds(p)))));
  }

  private static void holds(Expressible.Part part) {
    for (Expressible.Try attempt : part.tries()) {
      List<String> came = WhatComesOfIt.of(part, attempt);
      for (String line : attempt.then()) {
        assertTrue(came.contains(line), () -> line + "\nis not among\n" + String.join("\n", came));
      }
    }
  }

  /** A rule that changes nothing would show nothing: without it something else is told. */
  @TestFactory
  Stream<DynamicTest> everyRuleChangesTheAnswer() {
    return ENTRIES.stream()
        .flatMap(e -> e.parts().stream())
        .filter(p -> !p.rule().isEmpty() && p.layer().isEmpty())
        .map(p -> DynamicTest.dynamicTest(p.name(), () -> changesTheAnswer(p)));
  }

  private static void changesTheAnswer(Expressible.Part part) {
    Expressible.Try first = part.tries().get(0);
    assertNotEquals(
        WhatComesOfIt.told(WhatComesOfIt.of(part, first)),
        WhatComesOfIt.told(WhatComesOfIt.without(part, first)));
  }

  /** None but these; a new one is told here before it is accepted. */
  @Test
  void nothingIsLeftUnsaid() {
    Map<String, String> not = new TreeMap<>();
    ENTRIES.forEach(e -> e.not().ifPresent(why -> not.put(e.id(), why)));
    assertEquals(Map.of(), not);
    Set<String> empty = new TreeSet<>();
    for (Expressible.Entry entry : ENTRIES) {
      if (entry.not().isEmpty() && entry.parts().isEmpty()) {
        empty.add(entry.id());
      }
      entry.parts().stream()
          .filter(p -> p.tries().isEmpty() || p.tries().stream().anyMatch(t -> t.then().isEmpty()))
          .forEach(p -> empty.add(entry.id() + ": " + p.name()));
    }
    assertEquals(Set.of(), empty, "nothing runs");
  }

  /** How many items each list has, so that none is lost. */
  @Test
  void theListsAreWhole() {
    Map<String, Long> counts =
        ENTRIES.stream()
            .collect(
                Collectors.groupingBy(
                    e -> e.id().substring(0, e.id().indexOf(' ')),
                    LinkedHashMap::new,
                    Collectors.counting()));
    assertEquals(
        Map.of(
            "from-published-policies", 14L,
            "findings", 19L,
            "events", 24L,
            "rule-forms", 13L,
            "answers", 4L),
        counts);
  }

  @Test
  void everyEventOfTheVocabularyIsAmongTheEvents() {
    String said = Expressible.text("events");
    List<String> missing =
        Shipped.words().vocabulary().events().stream()
            .map(EventKind::name)
            .filter(name -> !said.contains(name))
            .toList();
    assertEquals(List.of(), missing);
  }

  /** An entry of the bibliography, a worked case, or a word that there is none. */
  @Test
  void everySourceCanBeFound() {
    Set<String> cases = new TreeSet<>();
    Stream.of(Shipped.FLOOR, Shipped.HOSPITAL)
        .forEach(f -> Shipped.cases(f).cases().forEach(c -> cases.add(c.name())));
    Set<String> unknown = new TreeSet<>();
    ENTRIES.stream()
        .flatMap(e -> e.parts().stream())
        .flatMap(p -> Stream.of(p.source().split(", ")))
        .filter(s -> Shipped.bibliography().entry(s).isEmpty() && !cases.contains(s))
        .filter(s -> !s.equals("common practice") && !s.equals("no source"))
        .forEach(unknown::add);
    assertEquals(Set.of(), unknown);
  }
}
