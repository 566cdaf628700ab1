package org.tidemark.print;

import java.time.LocalTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tidemark.layer.Alternatives;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Barred;
import org.tidemark.model.Contact;
import org.tidemark.model.Effect;
import org.tidemark.model.Fallback;
import org.tidemark.model.Header;
import org.tidemark.model.PolicyValue;
import org.tidemark.model.Rule;
import org.tidemark.model.Step;

/** Writes a policy down as the texts and lists that guidance and cards may name. */
public final class PolicyViews {
  private final EffectivePolicy policy;

  private PolicyViews(EffectivePolicy policy) {
    this.policy = policy;
  }

  public static PolicyView of(EffectivePolicy policy) {
    PolicyViews views = new PolicyViews(policy);
    Map<String, String> values = views.values();
    Map<String, Boolean> stated = new TreeMap<>();
    KnownNames.VALUES.forEach(name -> stated.put(name, false));
    policy.values().forEach(value -> stated.put(KnownNames.of(value.name()), false));
    values.keySet().forEach(name -> stated.put(name, true));
    return new PolicyView(values, stated, views.lists(), views.about());
  }

  private Map<String, String> values() {
    Map<String, String> values = new TreeMap<>();
    for (PolicyValue value : policy.values()) {
      String name = KnownNames.of(value.name());
      if (value.isStated()) {
        values.put(name, policy.print(value));
      }
      if (value.content() instanceof PolicyValue.Window window) {
        values.put(name + "_from", clock(window.from()));
        values.put(name + "_until", clock(window.until()));
      }
    }
    callForBreathing().ifPresent(who -> values.put("signs_contact", who));
    return values;
  }

  private static String clock(LocalTime time) {
    return String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute());
  }

  private Map<String, String> about() {
    Header header = policy.header();
    Map<String, String> about = new TreeMap<>();
    about.put("title", header.title());
    about.put("owner", header.owner());
    about.put("edition", Integer.toString(header.edition()));
    about.put("review_by", header.reviewBy().map(CardDate::words).orElse("no date stated"));
    return about;
  }

  private Map<String, List<String>> lists() {
    Map<String, List<String>> lists = new TreeMap<>();
    KnownNames.LISTS.forEach(name -> lists.put(name, List.of()));
    lists.put("recheck_triggers", filled(policy.care().lapses().stream().map(l -> l.says())));
    lists.put("never_count", policy.barred().stream().map(PolicyViews::doesNotCount).toList());
    lists.put("ph_not_enough", new NotEnough(policy).lines());
    policy
        .care()
        .records()
        .forEach(r -> lists.put("record_" + KnownNames.of(r.name()), filled(r.fields().stream())));
    policy.care().fallbacks().forEach(f -> fallback(f, lists));
    return lists;
  }

  private void fallback(Fallback fallback, Map<String, List<String>> lists) {
    String name = KnownNames.of(fallback.name());
    lists.put(name + "_steps", filled(fallback.steps().stream().map(PolicyViews::step)));
    lists.put(name + "_then", filled(fallback.then().stream()));
    lists.put(name + "_call", call(fallback.contact()));
    if (name.equals("fallback")) {
      lists.put(
          "barred_steps", filled(fallback.barredSteps().stream().map(Fallback.BarredStep::says)));
    }
  }

  private List<String> filled(Stream<String> texts) {
    return texts.map(policy::fill).toList();
  }

  private static String step(Step step) {
    List<String> ways = step.alternatives().stream().map(Step.Alternative::says).toList();
    if (ways.size() == 1) {
      return ways.get(0);
    }
    List<String> clauses = ways.stream().map(PolicyViews::clause).toList();
    return "Either " + String.join(", or ", clauses) + ".";
  }

  private static String doesNotCount(Barred barred) {
    String test = barred.finding().replace('-', ' ');
    return test.substring(0, 1).toUpperCase(Locale.ROOT)
        + test.substring(1)
        + ": "
        + clause(barred.because())
        + ".";
  }

  /**
   * A sentence as a part of another: no full stop, and a small first letter unless it is a name.
   */
  private static String clause(String sentence) {
    String open = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    boolean word = open.length() > 1 && Character.isLowerCase(open.charAt(1));
    boolean article = open.startsWith("A ");
    return word || article
        ? open.substring(0, 1).toLowerCase(Locale.ROOT) + open.substring(1)
        : open;
  }

  /**
   * Whom the policy calls for trouble with breathing, which is not whom it calls for a doubtful
   * check.
   */
  private Optional<String> callForBreathing() {
    return policy.question("use").stream()
        .flatMap(q -> q.rules(Effect.ESCALATE).stream())
        .filter(this::looksAtBreathing)
        .flatMap(r -> r.contact().flatMap(policy::contact).stream())
        .map(c -> clause(c.who()))
        .findFirst();
  }

  private boolean looksAtBreathing(Rule rule) {
    return Alternatives.of(policy, rule.given()).stream()
        .flatMap(List::stream)
        .anyMatch(atom -> atom.finding().equals("breathing"));
  }

  /** Whom to call, and whom when that person cannot be reached; each contact once. */
  List<String> call(Optional<String> first) {
    Set<String> lines = new LinkedHashSet<>();
    Optional<Contact> next = first.flatMap(policy::contact);
    while (next.isPresent() && lines.add(line(next.get(), lines.isEmpty()))) {
      next = next.get().otherwise().flatMap(policy::contact);
    }
    return List.copyOf(lines);
  }

  private static String line(Contact contact, boolean first) {
    String who = first ? contact.who() : "Otherwise: " + clause(contact.who());
    return who + ", " + clause(contact.when()) + ".";
  }
}
