package org.tidemark.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import java.util.ArrayList;
import java.util.List;

/** Who may use whom: the tables as rules. */
final class RoomFences {
  private RoomFences() {}

  /** One fence a room, one against cycles, one against rooms that nobody planned. */
  static List<Fence> of(House house) {
    List<Fence> fences = new ArrayList<>();
    house.uses().keySet().forEach(room -> fences.add(room(house, room)));
    fences.add(noCycles(house));
    fences.add(noUnplannedRoom(house));
    return fences;
  }

  private static Fence room(House house, String room) {
    List<String> allowed = new ArrayList<>(List.of(house.within(room)));
    allowed.add("java..");
    return new Fence(
        "room " + room,
        classes()
            .that()
            .resideInAnyPackage(house.packages(List.of(room)))
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(allowed.toArray(String[]::new))
            .allowEmptyShould(true)
            .because(
                "arrows go only downward and each library has its home,"
                    + " so that no plug-in, template or index can reach an outcome"));
  }

  private static Fence noCycles(House house) {
    return new Fence(
        "no cycles",
        slices()
            .matching(house.base() + ".(**)")
            .should()
            .beFreeOfCycles()
            .because("rooms that need each other cannot be read or believed one at a time"));
  }

  private static Fence noUnplannedRoom(House house) {
    return new Fence(
        "no unplanned room",
        classes()
            .should()
            .resideInAnyPackage(house.everywhere())
            .because("a package without a line in rooms.txt would be fenced by nothing"));
  }
}
