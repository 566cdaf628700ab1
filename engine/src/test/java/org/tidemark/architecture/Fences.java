package org.tidemark.architecture;

import java.util.ArrayList;
import java.util.List;

/** All fences of a house. */
public final class Fences {
  private Fences() {}

  /** The fences of the engine, or of the planted copy of it. */
  public static List<Fence> engine(String base) {
    House house = House.read(base, "/architecture");
    List<Fence> fences = new ArrayList<>(RoomFences.of(house));
    fences.addAll(QuietFences.of(house));
    fences.addAll(HabitFences.of("nobody"));
    return fences;
  }

  /**
   * The fences of another module.
   *
   * @param base the package its rooms lie in
   * @param folder the resource folder of its tables
   * @param door the one class that may touch the process's streams
   */
  public static List<Fence> module(String base, String folder, String door) {
    List<Fence> fences = new ArrayList<>(RoomFences.of(House.read(base, folder)));
    fences.addAll(HabitFences.of(door));
    return fences;
  }
}
