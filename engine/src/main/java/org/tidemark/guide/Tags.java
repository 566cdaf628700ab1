package org.tidemark.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;

/** What a filter can tell articles apart by, written as words of one field. */
final class Tags {
  private static final String ACT_NOW = "act-now";

  private Tags() {}

  static List<String> of(Article article) {
    List<String> tags = new ArrayList<>();
    article.populations().forEach(p -> tags.add(tag(p)));
    article.tubes().forEach(t -> tags.add(tag(t)));
    tags.add(tag(article.stage()));
    if (article.actNow()) {
      tags.add(ACT_NOW);
    }
    return tags;
  }

  private static String tag(Enum<?> value) {
    return value.getDeclaringClass().getSimpleName() + ":" + value.name();
  }

  /** What passes a filter; an article for emergencies always does. */
  static Query passing(GuidanceFilter filter) {
    BooleanQuery.Builder wanted = new BooleanQuery.Builder();
    wanted.add(new MatchAllDocsQuery(), Occur.MUST);
    must(wanted, filter.population());
    must(wanted, filter.tube());
    filter.stage().ifPresent(stage -> wanted.add(stage(stage), Occur.MUST));
    return new BooleanQuery.Builder()
        .add(term(ACT_NOW), Occur.SHOULD)
        .add(wanted.build(), Occur.SHOULD)
        .build();
  }

  private static void must(BooleanQuery.Builder wanted, Optional<? extends Enum<?>> value) {
    value.ifPresent(v -> wanted.add(term(tag(v)), Occur.MUST));
  }

  private static Query stage(Stage stage) {
    return new BooleanQuery.Builder()
        .add(term(tag(stage)), Occur.SHOULD)
        .add(term(tag(Stage.ANY)), Occur.SHOULD)
        .build();
  }

  private static Query term(String tag) {
    return new TermQuery(new Term(Shelves.TAG, tag));
  }
}
