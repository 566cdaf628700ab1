package org.tidemark.inputs;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tidemark.layer.DateChecks;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.layer.GroupChecks;
import org.tidemark.layer.Layering;
import org.tidemark.load.Acceptances;
import org.tidemark.load.BibliographyLoader;
import org.tidemark.load.FindingsLoader;
import org.tidemark.load.PolicyLoader;
import org.tidemark.load.RecordLoader;
import org.tidemark.load.VocabularyLoader;
import org.tidemark.model.Bibliography;
import org.tidemark.model.Header;
import org.tidemark.model.Policy;
import org.tidemark.model.Vocabulary;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.Loaded;
import org.tidemark.source.Problems;
import org.tidemark.source.SourceText;
import org.tidemark.testkit.InputCase;
import org.tidemark.testkit.Marked;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlReader;
import org.tidemark.yaml.YamlText;

/**
 * Reads the cases: with a small vocabulary, a small bibliography, a floor and good policies at
 * hand.
 */
final class Bench {
  private static final YamlReader READER = new YamlReader();
  static final Vocabulary VOCABULARY = good("vocabulary.yaml", VocabularyLoader::load).vocabulary();
  static final Bibliography BIBLIOGRAPHY = good("bibliography.yaml", BibliographyLoader::load);

  static final Policy FLOOR =
      good("floor.yaml", r -> new PolicyLoader(VOCABULARY, BIBLIOGRAPHY).load(r, List.of()));

  private Bench() {}

  private static <T> T good(String name, Function<YamlNode, Loaded<T>> loader) {
    return READER
        .read(SourceText.of(name, resource("base/" + name)), loader)
        .match(
            value -> value,
            errors -> {
              throw new AssertionError(rendered(errors));
            });
  }

  static String rendered(List<Diagnostic> diagnostics) {
    return diagnostics.stream().map(Diagnostic::render).collect(Collectors.joining("\n"));
  }

  static String resource(String name) {
    try (InputStream in = Bench.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The text of a case: written out, or a change to the good file of its kind. */
  static String text(InputCase c) {
    String text =
        c.parts().containsKey("text")
            ? c.part("text")
            : changed(resource("base/" + c.setting("as", "policy") + ".yaml"), c);
    String meant = Marked.read(text);
    return switch (c.setting("line-ends", "lf")) {
      case "crlf" -> meant.replace("\n", "\r\n");
      case "cr" -> meant.replace('\n', '\r');
      case "lf" -> meant;
      default -> throw new IllegalArgumentException("line-ends: lf, crlf or cr in " + c.name());
    };
  }

  private static String changed(String good, InputCase c) {
    int at = good.indexOf(c.part("replace"));
    if (at < 0 || good.indexOf(c.part("replace"), at + 1) >= 0) {
      throw new IllegalArgumentException("what is to be replaced must stand there once: " + c);
    }
    return good.replace(c.part("replace"), c.part("with"));
  }

  /** The line that the expectations call line 1. */
  static int firstLine(InputCase c) {
    if (c.parts().containsKey("text")) {
      return 1;
    }
    String good = resource("base/" + c.setting("as", "policy") + ".yaml");
    return (int) good.substring(0, good.indexOf(c.part("replace"))).lines().count() + 1;
  }

  static Loaded<String> read(InputCase c) {
    String as = c.setting("as", c.parts().containsKey("text") ? "yaml" : "policy");
    if (!c.setting("file", "").isEmpty()) {
      return READER.read(Path.of(c.setting("file", "")), root -> Loaded.good(shown(root)));
    }
    String name = as.equals("json") ? "findings.json" : as + ".yaml";
    if (!c.setting("today", "").isEmpty()) {
      return said(on(c.setting("today", ""), layered(SourceText.of(name, text(c)), List.of())));
    }
    byte[] bytes = text(c).getBytes(Charset.forName(c.setting("encoding", "UTF-8")));
    return SourceText.decode(name, bytes).match(s -> read(as, s), Loaded::broken);
  }

  static Loaded<String> read(String as, SourceText source) {
    return switch (as) {
      case "yaml" -> READER.read(source, root -> Loaded.good(shown(root)));
      case "policy" -> said(policy(source));
      case "alone", "floor" -> said(layered(source, List.of()));
      case "layer" -> said(layered(source, List.of(FLOOR)));
      case "beside" -> said(beside(layered(source, List.of())));
      case "findings", "json" ->
          said(READER.read(source, root -> FindingsLoader.load(root, VOCABULARY)));
      case "record" -> said(READER.read(source, root -> RecordLoader.load(root, VOCABULARY)));
      case "vocabulary" -> said(READER.read(source, VocabularyLoader::load));
      case "bibliography" -> said(READER.read(source, BibliographyLoader::load));
      default -> throw new IllegalArgumentException("cannot be read as " + as);
    };
  }

  static Loaded<Policy> policy(SourceText source) {
    return READER.read(
        source, root -> new PolicyLoader(VOCABULARY, BIBLIOGRAPHY).load(root, List.of()));
  }

  /** A policy on those below it, with the checks of the whole. */
  static Loaded<EffectivePolicy> layered(SourceText source, List<Policy> below) {
    Loaded<Policy> read =
        READER.read(source, root -> new PolicyLoader(VOCABULARY, BIBLIOGRAPHY).load(root, below));
    return read.match(
        top -> {
          List<Policy> layers = new ArrayList<>(below);
          layers.add(top);
          return withRemarks(read.diagnostics(), Layering.combine(VOCABULARY, layers));
        },
        Loaded::broken);
  }

  /** The policy beside one for adults of the same owner. */
  private static Loaded<EffectivePolicy> beside(Loaded<EffectivePolicy> read) {
    EffectivePolicy adult = good("alone.yaml", r -> alone(r));
    return read.match(
        child -> {
          List<Header> headers = List.of(adult.header(), child.header());
          Problems all = new Problems();
          all.addAll(read.diagnostics());
          all.addAll(Acceptances.mark(headers, GroupChecks.of(List.of(adult, child))));
          return all.conclude(() -> child);
        },
        Loaded::broken);
  }

  private static Loaded<EffectivePolicy> alone(YamlNode root) {
    return new PolicyLoader(VOCABULARY, BIBLIOGRAPHY)
        .load(root, List.of())
        .match(p -> Layering.combine(VOCABULARY, List.of(p)), Loaded::broken);
  }

  /** What a day makes of the policy, where the case names one. */
  private static Loaded<EffectivePolicy> on(String day, Loaded<EffectivePolicy> read) {
    return read.match(
        policy -> {
          Problems all = new Problems();
          all.addAll(read.diagnostics());
          all.addAll(DateChecks.of(policy.header(), LocalDate.parse(day)));
          return all.conclude(() -> policy);
        },
        Loaded::broken);
  }

  /** All remarks together, those that the policy accepts set apart. */
  private static Loaded<EffectivePolicy> withRemarks(
      List<Diagnostic> ofReading, Loaded<EffectivePolicy> whole) {
    Problems all = new Problems();
    all.addAll(ofReading);
    all.addAll(whole.diagnostics());
    return whole.match(
        policy -> Acceptances.settle(policy.layers(), all.conclude(() -> policy)),
        broken -> Loaded.broken(all.sorted()));
  }

  private static <T> Loaded<String> said(Loaded<T> loaded) {
    List<Diagnostic> remarks = loaded.diagnostics();
    return loaded.match(value -> Loaded.good(value.toString(), remarks), Loaded::broken);
  }

  /** The tree on one line, each text in double quotes whatever it looks like. */
  static String shown(YamlNode node) {
    if (node instanceof YamlMap map) {
      return map.entries().stream()
          .map(e -> quoted(e.key()) + ": " + shown(e.value()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (node instanceof YamlList list) {
      return list.items().stream().map(Bench::shown).collect(Collectors.joining(", ", "[", "]"));
    }
    return quoted((YamlText) node);
  }

  private static String quoted(YamlText text) {
    return '"' + Marked.write(text.text()) + '"';
  }
}
