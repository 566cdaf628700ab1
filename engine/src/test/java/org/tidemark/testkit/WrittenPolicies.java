package org.tidemark.testkit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Files of sound policies over the small vocabulary of the input cases, drawn from a seed: every
 * part of the language that a policy without a layer below may have, with its fields in any order.
 */
public final class WrittenPolicies {
  private final Random random;
  private final Map<String, Object> policy = new LinkedHashMap<>();
  private int names;

  private WrittenPolicies(Random random) {
    this.random = random;
  }

  /** The text of a policy. */
  public static String text(Random random) {
    WrittenPolicies written = new WrittenPolicies(random);
    written.header();
    written.numbers();
    written.questions();
    written.care();
    written.record();
    return new YamlWriter(random).document(written.policy);
  }

  private void header() {
    policy.put("policy", "written");
    policy.put("kind", "hospital");
    policy.put("title", text());
    policy.put("owner", "Example Hospital");
    policy.put("edition", "2");
    policy.put("words-from", Map.of("vocabulary", "small-words", "edition", "2"));
    policy.put("for", Map.of("population", "adult"));
    policy.put("builds-on", "nothing");
    policy.put("changed", Map.of("from", "1", "why", text(), "size", one("minor", "retrain")));
    boolean approved = random.nextBoolean();
    policy.put("status", approved ? "approved" : "draft");
    policy.put(
        "approved",
        approved
            ? Map.of("on", "2026-09-01", "by", "Nutrition steering group", "reference", "NSG-2")
            : "not-stated");
    policy.put("review-by", approved ? "2028-09-01" : "not-stated");
    maybe("not-for", () -> List.of(Map.of("place", "theatre", "see", "not-stated")));
    maybe("clock", () -> one("Europe/London", "Europe/Lisbon"));
    maybe("not-stated", () -> twoTexts());
    maybe("alerts", () -> List.of(Map.of("alert", "TT-01", "answered-by", List.of("too-high"))));
  }

  private void numbers() {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("ph-cut-off", number(one("4.5", "5", "5.5"), "pH"));
    values.put("clock-hours", number("4", "h"));
    values.put("early", new LinkedHashMap<>(Map.of("from", "07:00", "until", "19:30")));
    values.put("late", new LinkedHashMap<>(Map.of("from", "19:30", "until", "07:00")));
    values.put("air", Map.of("at-least", "10", "at-most", "20", "unit", "mL"));
    values.put("wait", Map.of("is", one("15", "not-stated"), "unit", "min"));
    values.put("read-within", Map.of("is", "60", "unit", "s"));
    policy.put("values", values);
    policy.put(
        "bands",
        Map.of(
            "pass-band", Map.of("of", "ph", "at-most", "ph-cut-off"),
            "fail-band", Map.of("of", "ph", "above", "ph-cut-off"),
            "low-band", Map.of("of", "ph", "below", "3", "inside", "pass-band")));
    policy.put("barred", List.of(Map.of("tests", List.of("air-listening"), "source", "TT-01")));
    policy.put(
        "terms",
        Map.of(
            "trouble",
                Map.of(
                    "any-of",
                    List.of(Map.of("breathing", "new"), Map.of("colour", tested("blue")))),
            "much",
                Map.of(
                    "some-of",
                    Map.of(
                        "how-many",
                        "2",
                        "of",
                        List.of(Map.of("breathing", "new"), Map.of("colour", "blue"))))));
  }

  private Map<String, Object> number(String is, String unit) {
    Map<String, Object> value = new LinkedHashMap<>(Map.of("is", is, "unit", unit));
    if (random.nextBoolean()) {
      value.put("why", text());
    }
    if (random.nextBoolean()) {
      value.put("source", random.nextBoolean() ? "TT-01" : List.of("TT-01"));
    }
    return value;
  }

  private void questions() {
    List<Object> rules = new ArrayList<>();
    rules.add(
        rule("good-aspirate", "allow", "position", Map.of("ph", "pass-band", "tube-state", "in")));
    rules.add(rule("too-high", "hold", "position", Map.of("ph", "fail-band")));
    rules.add(rule("new-trouble", "escalate", "signs", Map.of("trouble", yesOrNo())));
    int more = random.nextInt(6);
    for (int i = 0; i < more; i++) {
      String effect = one("hold", "not-yet", "escalate", "set-aside");
      rules.add(rule(effect + "-" + i, effect, one("position", "signs"), given()));
    }
    Collections.shuffle(rules, random);
    Map<String, Object> use = new LinkedHashMap<>();
    use.put("asks", text());
    use.put("words", Map.of("proceed", "Proceed", "hold", "Do not feed", "escalate", "Stop"));
    use.put("speaks-of", List.of("position", "signs"));
    use.put("rules", rules);
    policy.put("questions", Map.of("use", use));
    maybe("always", () -> List.of(statement("always-so", "hold", Map.of("ph", "fail-band"))));
    maybe("never", () -> List.of(statement("never-so", "proceed", given())));
  }

  private Map<String, Object> rule(String name, String effect, String about, Object given) {
    Map<String, Object> rule =
        new LinkedHashMap<>(Map.of("rule", name, "effect", effect, "about", about, "given", given));
    if (effect.equals("set-aside")) {
      rule.put("which", List.of("good-aspirate"));
    }
    if (!effect.equals("allow")) {
      rule.put("next", random.nextBoolean() ? text() : twoTexts());
      if (random.nextInt(4) == 0) {
        rule.put("done-by", text());
      }
    } else if (random.nextBoolean()) {
      rule.put("does-not-rule-out", text());
    }
    if (effect.equals("escalate")) {
      rule.put("contact", one("outreach", "nurse"));
      rule.put("running", "stop");
    }
    if (random.nextBoolean()) {
      rule.put("because", text());
    }
    return rule;
  }

  private Map<String, Object> statement(String name, String answer, Object given) {
    return Map.of(
        "statement",
        name,
        "question",
        "use",
        "given",
        given,
        "answer",
        answer,
        "says",
        text(),
        "because",
        text());
  }

  /** A condition whose parts speak of different things, so that it can be. */
  private Map<String, Object> given() {
    Map<String, Object> given = new LinkedHashMap<>();
    if (random.nextBoolean()) {
      given.put("outside-length", Map.of("above", "10", "at-most", one("20", "30.0")));
    } else if (random.nextBoolean()) {
      given.put("tube-state", tested(one("in", "out")));
    }
    if (random.nextInt(3) == 0) {
      given.put("ph", one("low-band", "not-recorded"));
    }
    switch (random.nextInt(3)) {
      case 0 -> given.putAll(sign());
      case 1 -> given.put("any-of", List.of(sign(), sign()));
      default -> given.put("much", yesOrNo());
    }
    return given;
  }

  private Map<String, Object> sign() {
    return random.nextBoolean()
        ? Map.of("breathing", tested(one("usual", "new")))
        : Map.of("colour", tested(one("usual", "blue")));
  }

  private Object tested(String option) {
    return switch (random.nextInt(4)) {
      case 0 -> List.of(option);
      case 1 -> Map.of("other-than", option);
      default -> option;
    };
  }

  private void care() {
    policy.put(
        "contacts",
        Map.of(
            "nurse", nurse(),
            "outreach", Map.of("who", "Outreach team", "when", "Always")));
    maybe("fallback", this::fallback);
    maybe("retest", () -> Map.of("after", Map.of("ph", "fail-band"), "then", text()));
    maybe("lapses", this::lapses);
    maybe("trays", this::trays);
    if (policy.containsKey("trays")) {
      policy.put("numbers-that-are-no-limits", List.of("60 mL enteral syringe"));
    }
    maybe("records", () -> Map.of("each-shift", Map.of("fields", twoTexts(), "when-asked", "use")));
  }

  private Object trays() {
    List<String> items = List.of(text(), "60 mL enteral syringe");
    return List.of(Map.of("tray", "fine", "title", "Fine", "items", items, "never", text()));
  }

  private Object nurse() {
    Map<String, Object> nurse = new LinkedHashMap<>(Map.of("who", "Nutrition nurse"));
    nurse.put("else", "outreach");
    if (random.nextBoolean()) {
      nurse.put("when", "By day");
    } else {
      nurse.put("hours", Map.of("from", "08:00", "until", "18:00", "days", "monday"));
      nurse.put("number", "bleep 0412");
    }
    return nurse;
  }

  private Object fallback() {
    return Map.of(
        "after", Map.of("aspirate", "none"),
        "in-order", one("yes", "no", "not-stated"),
        "steps",
            List.of(
                Map.of("step", "turn", "do", text()),
                Map.of(
                    "either",
                    List.of(
                        Map.of("step", "air", "do", text()),
                        Map.of("step", "wait", "do", text())))),
        "barred-steps", List.of(Map.of("step", "push", "never", text())),
        "then", List.of(text()),
        "contact", "nurse");
  }

  private Object lapses() {
    List<Object> all =
        new ArrayList<>(
            List.of(
                lapse(Map.of("on", "vomited")),
                lapse(Map.of("on", List.of("vomited", "doubt-raised"), "does", "end")),
                lapse(Map.of("every", "clock-hours", "feed-mode", "continuous")),
                lapse(Map.of("every", "each-shift", "shifts", List.of("early", "late"))),
                lapse(Map.of("use", "medicine")),
                lapse(Map.of("seen", Map.of("breathing", "new"))),
                lapse(Map.of("by-hand", text())),
                lapse(Map.of("on", "doubt-raised", "does", "suspend", "until", "doubt-settled"))));
    Collections.shuffle(all, random);
    return all.subList(0, 1 + random.nextInt(all.size()));
  }

  private Map<String, Object> lapse(Map<String, Object> more) {
    Map<String, Object> lapse = new LinkedHashMap<>(more);
    lapse.put("lapse", "lapse-" + names++);
    lapse.put("when", text());
    return lapse;
  }

  private void record() {
    maybe(
        "counts",
        () ->
            Map.of(
                "ph-readings",
                Map.of(
                    "drop",
                    List.of(
                        Map.of(
                            "when", Map.of("read-after", Map.of("above", "read-within")),
                            "because", text())))));
    maybe(
        "own-findings",
        () ->
            Map.of(
                "milky",
                Map.of(
                    "asks",
                    text(),
                    "kind",
                    "yes-no",
                    "worse",
                    List.of("no", "yes"),
                    "ask",
                    "5.5",
                    "applies",
                    Map.of("aspirate", "obtained"))));
  }

  private void maybe(String name, Supplier<Object> value) {
    if (random.nextBoolean()) {
      policy.put(name, value.get());
    }
  }

  private String yesOrNo() {
    return one("yes", "no");
  }

  private String one(String... words) {
    return words[random.nextInt(words.length)];
  }

  private List<String> twoTexts() {
    return Stream.generate(this::text).distinct().limit(2).toList();
  }

  /** A sentence with signs that a careless writer would stumble over; it states no number. */
  private String text() {
    return one(
        "Turn the patient onto the left side.",
        "Ask: is it so?",
        "Do not push; \"stop\" and wait.",
        "It's the ward's own way - so far.",
        "Reading {ph-cut-off} or less.",
        "Kräuter & co, [so] they say.",
        "First the strip, then the tube.");
  }
}
