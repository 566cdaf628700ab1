package org.tidemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

/** The verb read. */
class ReadTest {
  @Test
  void anArticleHasThePolicysNumberItsSourcesAndItsReviewDate() {
    Ran ran = Ran.with("read", "ph-cutoff");
    assertEquals(0, ran.code(), ran.err());
    assertTrue(ran.out().startsWith("Which pH lets you use the tube\n"), ran.out());
    assertTrue(ran.out().replace("\n", " ").contains("pH 5.0 or less"), ran.out());
    assertTrue(
        ran.out().contains("\nSources\n")
            && ran.out().contains("  PH-01: NHS England. Enduring standards"),
        ran.out());
    assertTrue(ran.out().contains("numbers of example-general-adult, edition 3."), ran.out());
    assertTrue(ran.out().contains("Review by 30 November 2027."), ran.out());
  }

  @Test
  void asJson() {
    JsonNode article = Repo.json(Ran.with("read", "aspiration-now", "--json").out());
    assertEquals("aspiration-now", article.path("article").textValue());
    assertEquals(true, article.path("act-now").booleanValue());
    assertEquals("example-general-adult", article.path("policy").textValue());
    assertTrue(article.path("sources").size() > 0);
  }

  @Test
  void aNameThatNoArticleHasIsNothingFound() {
    Ran ran = Ran.with("read", "no-asprate");
    assertEquals(5, ran.code());
    assertTrue(ran.err().contains("did you mean `no-aspirate`?"), ran.err());
  }
}
