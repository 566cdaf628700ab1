package org.tidemark.print;

import java.util.List;
import java.util.Optional;

/**
 * A bedside checklist, settled to its last word; a page only lays it out.
 *
 * @param strip what it says about itself
 * @param mode how it is worked through
 * @param banners what the reader must know first, such as a departure from the floor
 * @param pauses its parts, each read in one go
 * @param never what never counts or is never done, whole sentences
 * @param shortForms short forms that it uses, each spelled out once
 * @param sources the publications behind it
 */
public record CardView(
    CardStrip strip,
    CardMode mode,
    List<String> banners,
    List<Pause> pauses,
    List<String> never,
    List<String> shortForms,
    List<String> sources) {
  public CardView {
    banners = List.copyOf(banners);
    pauses = List.copyOf(pauses);
    never = List.copyOf(never);
    shortForms = List.copyOf(shortForms);
    sources = List.copyOf(sources);
  }

  /**
   * Items that belong together, and what must be true before the reader goes on.
   *
   * @param heading its name
   * @param items what to do, one action each
   * @param stop the bar after it
   */
  public record Pause(String heading, List<Item> items, Optional<Stop> stop) {
    public Pause {
      items = List.copyOf(items);
    }
  }

  /**
   * One action.
   *
   * @param number its number on the card
   * @param says what to do; begins with the verb
   * @param blank the value that was seen, to be written
   */
  public record Item(int number, String says, Optional<Blank> blank) {}

  /**
   * A line to write on.
   *
   * @param label what goes there
   * @param unit its unit; may be empty
   */
  public record Blank(String label, String unit) {}

  /**
   * A stop between a check and what hangs on it.
   *
   * @param goOnIf what must be true to go on; any one of them
   * @param otherwise what to do if it is not
   * @param call whom to call then
   */
  public record Stop(List<String> goOnIf, List<String> otherwise, List<String> call) {
    public Stop {
      goOnIf = List.copyOf(goOnIf);
      otherwise = List.copyOf(otherwise);
      call = List.copyOf(call);
    }
  }
}
