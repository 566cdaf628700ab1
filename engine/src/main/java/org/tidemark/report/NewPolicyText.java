package org.tidemark.report;

import java.nio.file.Path;
import java.util.List;
import org.tidemark.source.Diagnostic;

/** A blank policy that was written, and what is missing in it, as text. */
public final class NewPolicyText {
  private NewPolicyText() {}

  public static String of(List<Path> files, List<Diagnostic> missing) {
    Sheet sheet = new Sheet().line("Written");
    files.forEach(file -> sheet.line("  - " + file));
    sheet.heading("Still missing, " + missing.size() + " in all");
    missing.forEach(
        m -> sheet.line("  - " + m.at() + ": " + m.message() + " [" + m.code().id() + "]"));
    return sheet.toString();
  }
}
