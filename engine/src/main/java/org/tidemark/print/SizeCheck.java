package org.tidemark.print;

import java.util.List;
import java.util.Map;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;

/** Measures a template and all that goes into it before any of it is filled. */
final class SizeCheck {
  private final Span template;
  private final Problems problems;

  SizeCheck(Span template, Problems problems) {
    this.template = template;
    this.problems = problems;
  }

  void check(Map<String, Object> tree) {
    int length = template.end() - template.start();
    if (length > TemplateFiller.LONGEST_TEMPLATE) {
      tooLarge("the template has " + length + " characters", TemplateFiller.LONGEST_TEMPLATE);
    }
    tree.forEach((name, part) -> part(name, part));
  }

  private void part(String name, Object part) {
    if (part instanceof Map<?, ?> map) {
      map.forEach((key, value) -> part(name + "." + key, value));
    } else if (part instanceof List<?> list) {
      list(name, list);
    } else if (part instanceof String text && text.length() > TemplateFiller.LONGEST_TEXT) {
      tooLarge(name + " has " + text.length() + " characters", TemplateFiller.LONGEST_TEXT);
    }
  }

  private void list(String name, List<?> list) {
    if (list.size() > TemplateFiller.LONGEST_LIST) {
      tooLarge("the list " + name + " has " + list.size() + " items", TemplateFiller.LONGEST_LIST);
    }
    list.forEach(item -> part(name, item));
  }

  private void tooLarge(String message, int limit) {
    int end = Math.min(template.start() + 1, template.end());
    problems.add(
        Diagnostic.error(
                DiagnosticCode.TOO_LARGE,
                template.source().span(template.start(), end),
                message + ", which is too many")
            .help("at most " + limit + "; nothing is cut short in silence"));
  }
}
