package org.tidemark.guide;

/**
 * A question to the guidance.
 *
 * @param text what was typed; data, never a query language
 * @param filter what to leave out
 * @param limit how many hits at most
 * @param explain whether each hit says why it is there
 */
public record Ask(String text, GuidanceFilter filter, int limit, boolean explain) {
  public Ask {
    if (limit < 1) {
      throw new IllegalArgumentException("a search for no hits at all: " + limit);
    }
  }

  public static Ask of(String text) {
    return new Ask(text, GuidanceFilter.ALL, 5, false);
  }

  public Ask filter(GuidanceFilter wanted) {
    return new Ask(text, wanted, limit, explain);
  }

  public Ask limit(int most) {
    return new Ask(text, filter, most, explain);
  }

  public Ask explained() {
    return new Ask(text, filter, limit, true);
  }
}
