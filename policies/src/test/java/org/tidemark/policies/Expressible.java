package org.tidemark.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidemark.load.Fields;
import org.tidemark.source.Located;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;
import org.tidemark.yaml.YamlText;

/** Lists of what a policy must be able to say, each item with something that runs. */
final class Expressible {
  private static final String FOLDER = "expressible/";
  static final List<String> LISTS =
      List.of("from-published-policies", "findings", "events", "rule-forms", "answers");

  private Expressible() {}

  /**
   * One item of a list.
   *
   * @param id its list and its number
   * @param says the item in words
   * @param parts what it asks for, piece by piece
   * @param not why it cannot be said, when it cannot
   */
  record Entry(String id, String says, List<Part> parts, Optional<String> not) {}

  /**
   * One piece of an item.
   *
   * @param name what can be said
   * @param source who says so
   * @param policy fields that take the place of those of the small policy
   * @param rule one more rule of the small policy
   * @param layer fields of a layer on it
   * @param tries what comes of it
   */
  record Part(
      String name, String source, String policy, String rule, String layer, List<Try> tries) {}

  /**
   * One question to the policy.
   *
   * @param question which question
   * @param day on which day
   * @param with findings beside those of the usual case, or in their place
   * @param open findings of the usual case that are not known here
   * @param record the tube's record
   * @param then all that must come of it
   */
  record Try(
      String question,
      Optional<String> day,
      Optional<YamlNode> with,
      List<String> open,
      Optional<YamlNode> record,
      List<String> then) {}

  static String text(String name) {
    return Shipped.text(FOLDER + name + ".yaml");
  }

  static List<Entry> entries() {
    List<Entry> all = new ArrayList<>();
    LISTS.forEach(name -> all.addAll(entries(name)));
    return all;
  }

  private static List<Entry> entries(String name) {
    Problems problems = new Problems();
    Fields file = Fields.of(Shipped.tree(FOLDER + name + ".yaml"), name, problems);
    file.text("from");
    List<Part> template = file.list("each-event", n -> part(fields(n, problems)));
    List<Entry> entries = file.list("entries", n -> entry(name, fields(n, problems), template));
    only(file, "from", "each-event", "entries");
    if (!problems.sorted().isEmpty()) {
      throw new AssertionError(problems.sorted().stream().map(d -> d.render()).toList());
    }
    return entries;
  }

  private static Fields fields(YamlNode node, Problems problems) {
    return new Fields((YamlMap) node, "an item", problems);
  }

  /** A key that nobody reads would be a check that never runs. */
  private static void only(Fields fields, String... names) {
    for (YamlMap.Entry entry : fields.entries()) {
      if (!List.of(names).contains(entry.key().text())) {
        throw new AssertionError("nobody reads `" + entry.key().text() + "` in " + fields.span());
      }
    }
  }

  private static Entry entry(String list, Fields fields, List<Part> template) {
    String id = list + " " + fields.text("entry").value();
    String says = fields.text("says").value();
    List<Part> parts =
        new ArrayList<>(fields.list("parts", n -> part(fields(n, fields.problems()))));
    for (Located<String> event : fields.texts("events")) {
      template.forEach(t -> parts.add(of(event.value(), t)));
    }
    Optional<String> not = fields.optionalText("not-expressible").map(Located::value);
    only(fields, "entry", "says", "parts", "events", "not-expressible");
    return new Entry(id, says, parts, not);
  }

  private static Part part(Fields fields) {
    Part part =
        new Part(
            fields.text("part").value(),
            fields.text("source").value(),
            text(fields, "policy"),
            fields.optional("rule").map(Expressible::rule).orElse(""),
            text(fields, "layer"),
            fields.list("tries", n -> attempt(fields(n, fields.problems()))));
    only(fields, "part", "source", "policy", "rule", "layer", "tries");
    return part;
  }

  private static Try attempt(Fields fields) {
    Try attempt =
        new Try(
            text(fields, "question").isEmpty() ? "use" : text(fields, "question"),
            fields.optionalText("day").map(Located::value),
            fields.optional("with"),
            fields.texts("open").stream().map(Located::value).toList(),
            fields.optional("record"),
            fields.texts("then").stream().map(Located::value).toList());
    only(fields, "question", "day", "with", "open", "record", "then");
    return attempt;
  }

  /** A rule is written as in a policy, but for its name. */
  private static String rule(YamlNode node) {
    return node instanceof YamlText text ? text.text() : node.span().text();
  }

  private static String text(Fields fields, String key) {
    return fields.optionalText(key).map(Located::value).orElse("");
  }

  /** What an event does, with the event's name where the template leaves room for it. */
  private static Part of(String event, Part t) {
    return new Part(
        event + ": " + t.name(),
        t.source(),
        t.policy().replace("EVENT", event),
        t.rule(),
        t.layer(),
        t.tries().stream().map(a -> of(event, a)).toList());
  }

  private static Try of(String event, Try a) {
    return new Try(
        a.question(), a.day(), a.with(), a.open(), a.record().map(r -> of(event, r)), a.then());
  }

  private static YamlNode of(String event, YamlNode record) {
    return Shipped.sound(
        new YamlReader()
            .read(SourceText.of("record.yaml", record.span().text().replace("EVENT", event))));
  }
}
