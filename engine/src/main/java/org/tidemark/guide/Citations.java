package org.tidemark.guide;

import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Problems;
import org.tidemark.source.Span;

/** Looks whether every source that articles name exists. */
public final class Citations {
  private static final Pattern IN_TEXT = Pattern.compile("\\[([A-Z]{1,4}-[A-Z0-9-]+)\\]");

  private Citations() {}

  /** Every source in a head or a text that the bibliography does not hold. */
  public static List<Diagnostic> unknown(List<Article> articles, Set<String> bibliography) {
    Problems problems = new Problems();
    for (Article article : articles) {
      article
          .sources()
          .forEach(source -> check(source.value(), source.span(), bibliography, problems));
      inText(article, bibliography, problems);
    }
    return problems.sorted();
  }

  private static void inText(Article article, Set<String> bibliography, Problems problems) {
    Span body = article.body().span();
    Matcher cited = IN_TEXT.matcher(article.body().value());
    while (cited.find()) {
      Span place = body.source().span(body.start() + cited.start(1), body.start() + cited.end(1));
      check(cited.group(1), place, bibliography, problems);
    }
  }

  private static void check(
      String source, Span place, Set<String> bibliography, Problems problems) {
    if (!bibliography.contains(source)) {
      problems.add(
          Diagnostic.error(
              DiagnosticCode.UNKNOWN_CITATION, place, "the bibliography has no `" + source + "`"));
    }
  }
}
