package org.tidemark.load;

/**
 * How much a policy may hold, so that a hostile file ends in an error before anybody waits. Beside
 * these stand those of every file ({@link org.tidemark.yaml.YamlLimits}).
 *
 * @param text the longest text, in characters
 * @param name the longest name, in characters
 * @param named how many values, bands, terms, contacts, trays and so on, of each kind
 * @param rules how many rules a question may have in one file
 */
record PolicyLimits(int text, int name, int named, int rules) {
  /** Several times what any policy seen holds. */
  static final PolicyLimits DEFAULT = new PolicyLimits(2_000, 80, 500, 1_000);
}
