package org.tidemark.policies;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.Layering;
import org.tidemark.load.Acceptances;
import org.tidemark.load.PolicyLoader;
import org.tidemark.model.Policy;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.Severity;
import org.tidemark.source.SourceText;
import org.tidemark.yaml.YamlReader;

/** Parts of a policy that are laid over a whole one, and what the program makes of the result. */
final class Snippets {
  private static final Pattern FIELD = Pattern.compile("(?m)^(?=[a-z])");

  private Snippets() {}

  /** A whole policy with the fields of a snippet in the place of its own. */
  static String over(String whole, String snippet) {
    Map<String, String> fields = fields(whole);
    fields.putAll(fields(snippet));
    return String.join("", fields.values());
  }

  /** A whole policy with more at the end of one of its fields. */
  static String longer(String whole, String field, String more) {
    Map<String, String> fields = fields(whole);
    fields.merge(field, more, String::concat);
    return String.join("", fields.values());
  }

  private static Map<String, String> fields(String yaml) {
    Map<String, String> fields = new LinkedHashMap<>();
    FIELD
        .splitAsStream(yaml)
        .filter(field -> field.contains(":"))
        .forEach(field -> fields.put(field.substring(0, field.indexOf(':')), ended(field)));
    return fields;
  }

  private static String ended(String field) {
    return field.endsWith("\n") ? field : field + "\n";
  }

  /** A policy that builds on nothing. */
  static Loaded<EffectivePolicy> alone(String text) {
    return combined(load(text, List.of()), List.of());
  }

  /** A layer on a policy that is sound. */
  static Loaded<EffectivePolicy> layered(String below, String layer) {
    List<Policy> under = List.of(Shipped.sound(load(below, List.of())));
    return combined(load(layer, under), under);
  }

  private static Loaded<Policy> load(String text, List<Policy> below) {
    return new YamlReader()
        .read(
            SourceText.of("policy.yaml", text),
            root ->
                new PolicyLoader(Shipped.words().vocabulary(), Shipped.bibliography())
                    .load(root, below));
  }

  /** What was remarked on the top layer alone comes before what was remarked on the whole. */
  private static Loaded<EffectivePolicy> combined(Loaded<Policy> top, List<Policy> below) {
    return top.match(
        p -> {
          List<Policy> layers = Stream.concat(below.stream(), Stream.of(p)).toList();
          Loaded<EffectivePolicy> whole = Layering.combine(Shipped.words().vocabulary(), layers);
          return whole.match(
              policy ->
                  Acceptances.settle(
                      policy.layers(),
                      Loaded.good(
                          policy,
                          Stream.of(top, whole).flatMap(l -> l.diagnostics().stream()).toList())),
              Loaded::<EffectivePolicy>broken);
        },
        Loaded::<EffectivePolicy>broken);
  }

  /** Each remark of a severity: its code, and what it underlines. */
  static List<String> remarks(Loaded<EffectivePolicy> loaded, Severity severity) {
    return loaded.diagnostics().stream()
        .filter(d -> d.severity() == severity)
        .map(Snippets::shown)
        .toList();
  }

  private static String shown(Diagnostic d) {
    return d.code().id() + " «" + d.at().text() + "»";
  }
}
