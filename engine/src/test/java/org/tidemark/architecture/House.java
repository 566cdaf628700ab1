package org.tidemark.architecture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The rooms under one base package, who may use whom, and which library belongs where. Read from
 * two tables, so that the same rules hold for the house and for the planted violations.
 *
 * @param base the package that the rooms lie in
 * @param uses each room with the rooms it may use besides itself
 * @param libraries each pattern of library packages with the rooms that may use it
 */
public record House(
    String base, Map<String, Set<String>> uses, Map<String, List<String>> libraries) {
  private static final String ROOT = "(root)";
  private static final String EVERYBODY = "everybody";

  /** Reads {@code rooms.txt} and {@code libraries.txt} from a resource folder. */
  public static House read(String base, String folder) {
    return new House(
        base, rooms(Tables.read(folder + "/rooms.txt")), Tables.read(folder + "/libraries.txt"));
  }

  /** The patterns of all rooms. */
  String[] everywhere() {
    return packages(List.copyOf(uses.keySet()));
  }

  /** The patterns of what a room may use: of ours, and of the libraries. */
  String[] within(String room) {
    List<String> rooms = new ArrayList<>(uses.getOrDefault(room, Set.of()));
    rooms.add(room);
    List<String> patterns = new ArrayList<>(List.of(packages(rooms)));
    libraries.forEach(
        (library, users) -> {
          if (users.contains(EVERYBODY) || users.contains(room)) {
            patterns.add(library);
          }
        });
    return patterns.toArray(String[]::new);
  }

  /** The patterns of several rooms; one that is not in the table is a mistake in a rule. */
  String[] packages(List<String> rooms) {
    return rooms.stream().map(this::packages).toArray(String[]::new);
  }

  private String packages(String room) {
    if (!uses.containsKey(room)) {
      throw new IllegalArgumentException("no such room: " + room);
    }
    return room.equals(ROOT) ? base : base + "." + room + "..";
  }

  private static Map<String, Set<String>> rooms(Map<String, List<String>> table) {
    Map<String, Set<String>> rooms = new LinkedHashMap<>();
    table.forEach((room, words) -> rooms.put(room, allowed(words, rooms.keySet())));
    return rooms;
  }

  private static Set<String> allowed(List<String> words, Set<String> lower) {
    if (!words.contains("below")) {
      return new LinkedHashSet<>(words);
    }
    Set<String> allowed = new LinkedHashSet<>(lower);
    words.stream().skip(2).forEach(allowed::remove);
    return allowed;
  }
}
