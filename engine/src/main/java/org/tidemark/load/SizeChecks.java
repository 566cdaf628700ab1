package org.tidemark.load;

import java.util.Optional;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;
import org.tidemark.yaml.YamlList;
import org.tidemark.yaml.YamlMap;
import org.tidemark.yaml.YamlNode;
import org.tidemark.yaml.YamlText;

/** Measures a policy before any of it is understood. */
final class SizeChecks {
  private static final int SHOWN = 40;

  private final PolicyLimits limits;
  private final Problems problems;
  private boolean passes = true;

  SizeChecks(PolicyLimits limits, Problems problems) {
    this.limits = limits;
    this.problems = problems;
  }

  boolean passes(Fields policy) {
    for (YamlMap.Entry part : policy.seen()) {
      name(part.key());
      texts(part.value());
      if (part.key().text().equals("questions")) {
        questions(part.value());
      } else {
        count(part.key().text(), part.key().span(), size(part.value()), limits.named());
      }
    }
    return passes;
  }

  private void questions(YamlNode node) {
    if (node instanceof YamlMap questions) {
      count("questions", node.span(), questions.entries().size(), limits.named());
      questions.entries().forEach(q -> rules(q.value()));
    }
  }

  private void rules(YamlNode question) {
    if (question instanceof YamlMap map) {
      Optional<YamlMap.Entry> rules = map.entry("rules");
      rules.ifPresent(r -> count("rules", r.key().span(), size(r.value()), limits.rules()));
    }
  }

  private static int size(YamlNode node) {
    if (node instanceof YamlMap map) {
      return map.entries().size();
    }
    return node instanceof YamlList list ? list.items().size() : 1;
  }

  private void count(String name, Span at, int size, int most) {
    if (size > most) {
      tooLarge(at, "`" + name + "` holds " + size + ", and " + most + " are the most");
    }
  }

  private void texts(YamlNode node) {
    if (node instanceof YamlMap map) {
      map.entries().forEach(e -> name(e.key()));
      map.entries().forEach(e -> texts(e.value()));
    } else if (node instanceof YamlList list) {
      list.items().forEach(this::texts);
    } else if (node instanceof YamlText text && text.text().length() > limits.text()) {
      Span all = text.span();
      tooLarge(
          all.source().span(all.start(), Math.min(all.end(), all.start() + SHOWN)),
          "this text has "
              + text.text().length()
              + " characters, and "
              + limits.text()
              + " are the most");
    }
  }

  private void name(YamlText key) {
    if (key.text().length() > limits.name()) {
      Span all = key.span();
      tooLarge(
          all.source().span(all.start(), all.start() + SHOWN),
          "this name has "
              + key.text().length()
              + " characters, and "
              + limits.name()
              + " are the most");
    }
  }

  private void tooLarge(Span at, String message) {
    passes = false;
    problems.add(
        Diagnostic.error(DiagnosticCode.TOO_LARGE, at, message)
            .help("nobody reads this much at a bedside; two files may have been joined"));
  }
}
