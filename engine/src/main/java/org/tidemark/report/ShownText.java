package org.tidemark.report;

import java.util.List;
import org.tidemark.layer.EffectivePolicy;
import org.tidemark.model.Header;
import org.tidemark.print.Shown;

/** A policy as it holds, with what each layer says, as text. */
public final class ShownText {
  private ShownText() {}

  public static String of(EffectivePolicy policy) {
    Sheet sheet = new Sheet();
    Header header = policy.header();
    sheet.line(header.title() + ", edition " + header.edition());
    sheet.heading("Layers, the lowest first");
    sheet.numbered(policy.layers().stream().map(ShownText::layer).toList());
    String kind = "";
    for (Shown.Entry entry : Shown.of(policy)) {
      if (!entry.kind().equals(kind)) {
        sheet.heading(entry.kind());
      }
      kind = entry.kind();
      entry(sheet, entry);
    }
    return sheet.toString();
  }

  private static String layer(Header header) {
    return header.name() + ", edition " + header.edition() + ", " + header.kind().word();
  }

  /** One layer's say is how it holds; of several, each is told. */
  private static void entry(Sheet sheet, Shown.Entry entry) {
    String name = entry.name().isEmpty() ? "" : entry.name() + ": ";
    sheet.hanging("  ", name + (entry.holds().isEmpty() ? "nothing" : entry.holds()));
    List<Shown.Say> says = entry.says();
    if (says.size() == 1) {
      sheet.line("      " + says.get(0).layer() + ", " + says.get(0).where());
      return;
    }
    for (Shown.Say say : says) {
      sheet.line("      " + say.layer() + ", " + say.where());
      sheet.hanging("        says: ", say.text());
    }
  }
}
