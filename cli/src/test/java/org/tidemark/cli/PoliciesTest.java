package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The verb policies. */
class PoliciesTest {
  @Test
  void asText() {
    assertEquals(
        new Ran(0, Repo.golden("policies.txt"), ""), Ran.with("policies", "--today", "2026-11-25"));
  }

  @Test
  void aPassedReviewDateIsMarked() {
    Ran ran = Ran.with("policies", "--today", "2028-09-02");
    String text = ran.out();
    assertTrue(text.contains("  Review by:  1 September 2028 !! PASSED\n"), text);
    assertTrue(
        ran.err().contains("the review date of `example-general-adult` passed on 1 September 2028"),
        ran::err);
  }

  @Test
  void asJson() {
    Ran ran = Ran.with("policies", "--today", "2026-11-25", "--json");
    assertEquals(0, ran.code());
    assertEquals(
        "{\"name\":\"example-general-adult\",\"title\":\"Nasogastric tubes in adults\","
            + "\"owner\":\"Example General Hospital\",\"edition\":3,\"kind\":\"hospital\","
            + "\"answers-at-bedside\":true,\"population\":[\"adult\"],\"status\":\"approved\","
            + "\"review-by\":\"2028-09-01\",\"review-passed\":false,"
            + "\"builds-on\":\"floor-england-adult\",\"approved-on\":\"2026-09-01\","
            + "\"approved-by\":\"Nutrition steering group\"}",
        Repo.json(ran.out()).path("policies").path(1).toString());
  }
}
