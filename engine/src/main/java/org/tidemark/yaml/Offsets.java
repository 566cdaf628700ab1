package org.tidemark.yaml;

import org.yaml.snakeyaml.error.Mark;

/**
 * The parser counts whole characters (code points); texts here count UTF-16 units. This converts.
 */
final class Offsets {
  /** Empty when every sign is one unit long, as in nearly every file. */
  private final int[] unitOfPoint;

  private final int length;

  Offsets(String text) {
    int points = text.codePointCount(0, text.length());
    length = text.length();
    if (points == length) {
      unitOfPoint = new int[0];
      return;
    }
    unitOfPoint = new int[points + 1];
    int unit = 0;
    for (int point = 0; point < points; point++) {
      unitOfPoint[point] = unit;
      unit += Character.charCount(text.codePointAt(unit));
    }
    unitOfPoint[points] = unit;
  }

  int of(Mark mark) {
    return unitOfPoint.length == 0
        ? Math.min(mark.getIndex(), length)
        : unitOfPoint[Math.min(mark.getIndex(), unitOfPoint.length - 1)];
  }
}
