package org.tidemark.yaml;

import org.yaml.snakeyaml.error.Mark;

/**
 * The parser counts whole characters (code points); texts here count UTF-16 units. This converts.
 */
final class Offsets {
  private final int[] unitOfPoint;

  Offsets(String text) {
    int points = text.codePointCount(0, text.length());
    unitOfPoint = new int[points + 1];
    int unit = 0;
    for (int point = 0; point < points; point++) {
      unitOfPoint[point] = unit;
      unit += Character.charCount(text.codePointAt(unit));
    }
    unitOfPoint[points] = unit;
  }

  int of(Mark mark) {
    return unitOfPoint[Math.min(mark.getIndex(), unitOfPoint.length - 1)];
  }
}
