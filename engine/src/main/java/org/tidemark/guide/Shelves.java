package org.tidemark.guide;

import java.io.IOException;
import java.util.List;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.Directory;

/** Writes the entries into a Lucene index in memory. */
final class Shelves {
  /** Everything in an article; what matters more stands in it more often. */
  static final String ALL = "all";

  /** One title or one question. */
  static final String LINE = "line";

  /** The number of the entry that a document belongs to. */
  static final String ENTRY = "entry";

  /** What the filters look at. */
  static final String TAG = "tag";

  private static final int TITLE_COUNTS = 2;
  private static final int ANSWERS_COUNT = 2;
  private static final int FIRST_LINES_COUNT = 2;
  private static final int HEADINGS_COUNT = 1;
  private static final int BODY_COUNTS = 1;

  private Shelves() {}

  static DirectoryReader write(List<Entry> entries, Analyzer texts) throws IOException {
    Directory directory = new ByteBuffersDirectory();
    IndexWriterConfig config = new IndexWriterConfig(texts);
    config.setSimilarity(new MeaningSimilarity());
    try (IndexWriter writer = new IndexWriter(directory, config)) {
      for (int number = 0; number < entries.size(); number++) {
        addEntry(writer, number, entries.get(number));
      }
      writer.forceMerge(1);
    }
    return DirectoryReader.open(directory);
  }

  private static void addEntry(IndexWriter writer, int number, Entry entry) throws IOException {
    Document whole = document(number, entry.article());
    add(whole, List.of(entry.article().title()), TITLE_COUNTS);
    add(whole, entry.lines().subList(1, entry.lines().size()), ANSWERS_COUNT);
    add(whole, entry.firstLines(), FIRST_LINES_COUNT);
    add(whole, entry.headings(), HEADINGS_COUNT);
    add(whole, entry.body(), BODY_COUNTS);
    writer.addDocument(whole);
    for (String line : entry.lines()) {
      Document document = document(number, entry.article());
      document.add(new TextField(LINE, line, Field.Store.NO));
      writer.addDocument(document);
    }
  }

  private static Document document(int number, Article article) {
    Document document = new Document();
    document.add(new NumericDocValuesField(ENTRY, number));
    Tags.of(article).forEach(tag -> document.add(new StringField(TAG, tag, Field.Store.NO)));
    return document;
  }

  private static void add(Document document, List<String> texts, int times) {
    for (int i = 0; i < times; i++) {
      texts.forEach(text -> document.add(new TextField(ALL, text, Field.Store.NO)));
    }
  }
}
