package org.tidemark.yaml;

/**
 * How much a file may hold, so that a hostile one ends in an error and not in a stuck program.
 *
 * @param characters the longest text
 * @param depth how deep fields and lists may lie in one another
 * @param nodes how many texts, lists and field groups there may be
 */
public record YamlLimits(int characters, int depth, int nodes) {
  /**
   * Far above any policy seen, and read within a second: 400,000 characters, 20 levels, 40,000
   * parts.
   */
  public static final YamlLimits DEFAULT = new YamlLimits(400_000, 20, 40_000);
}
