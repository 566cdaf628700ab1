package org.tidemark.print;

import java.io.IOException;
import java.io.InputStream;
import org.tidemark.source.Diagnostic;
import org.tidemark.source.DiagnosticCode;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;

/** Where the pages and wordings of cards come from. */
@FunctionalInterface
public interface CardFiles {
  /** The text of a file, such as {@code card.vm}. */
  Loaded<SourceText> read(String name);

  /** The files that come with Tidemark. */
  static CardFiles onClassPath() {
    return CardFiles::fromClassPath;
  }

  private static Loaded<SourceText> fromClassPath(String name) {
    String path = "/org/tidemark/content/cards/" + name;
    try (InputStream in = CardFiles.class.getResourceAsStream(path)) {
      return in == null ? missing(path) : SourceText.decode(name, in.readAllBytes());
    } catch (IOException unreadable) {
      return missing(path);
    }
  }

  private static Loaded<SourceText> missing(String path) {
    return Loaded.broken(
        Diagnostic.error(
                DiagnosticCode.MISSING_FILE,
                SourceText.of(path, "").beginning(),
                "there is no such file among the cards")
            .help("the module with the content has to be on the class path"));
  }
}
