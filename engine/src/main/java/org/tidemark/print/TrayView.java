package org.tidemark.print;

import java.util.List;

/**
 * What to gather for one type of tube.
 *
 * @param strip what the card says about itself
 * @param tube the type of tube
 * @param banners what the reader must know first
 * @param items what goes on the tray
 * @param never what must not be done or be there, whole sentences
 * @param shortForms short forms that it uses, each spelled out once
 * @param sources the publications behind it
 */
public record TrayView(
    CardStrip strip,
    String tube,
    List<String> banners,
    List<String> items,
    List<String> never,
    List<String> shortForms,
    List<String> sources) {
  public TrayView {
    banners = List.copyOf(banners);
    items = List.copyOf(items);
    never = List.copyOf(never);
    shortForms = List.copyOf(shortForms);
    sources = List.copyOf(sources);
  }
}
