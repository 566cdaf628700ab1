package org.tidemark.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.analysis.en.EnglishAnalyzer;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.util.QueryBuilder;
import org.tidemark.guide.FilledArticle;

/** What Lucene does by itself with the same text: its English analyser and BM25, one field. */
final class PlainBaseline {
  private final EnglishAnalyzer analyzer = new EnglishAnalyzer();
  private final IndexSearcher searcher;

  PlainBaseline(List<FilledArticle> articles) {
    try {
      ByteBuffersDirectory directory = new ByteBuffersDirectory();
      try (IndexWriter writer = new IndexWriter(directory, new IndexWriterConfig(analyzer))) {
        for (FilledArticle filled : articles) {
          writer.addDocument(document(filled));
        }
      }
      searcher = new IndexSearcher(DirectoryReader.open(directory));
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static Document document(FilledArticle filled) {
    StringBuilder text = new StringBuilder(filled.article().title()).append('\n');
    filled.article().answers().forEach(line -> text.append(line.value()).append('\n'));
    Document document = new Document();
    document.add(new StoredField("id", filled.article().name()));
    document.add(new TextField("text", text.append(filled.markdown()).toString(), Field.Store.NO));
    return document;
  }

  List<String> find(String typed) {
    Query query = new QueryBuilder(analyzer).createBooleanQuery("text", typed);
    List<String> found = new ArrayList<>();
    try {
      if (query != null) {
        for (ScoreDoc hit : searcher.search(query, Quality.DEPTH).scoreDocs) {
          found.add(searcher.storedFields().document(hit.doc).get("id"));
        }
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return found;
  }
}
