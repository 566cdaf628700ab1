package org.tidemark.print;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidemark.source.Loaded;
import org.tidemark.source.SourceText;

/** Lays cards out as pages that stand alone: no script, no font or picture from elsewhere. */
public final class CardPrinter {
  /** Where a page's style goes; it never passes through the template, and no value can write it. */
  private static final String STYLE = "<!--style-->";

  private static final String STRIP = "strip";

  private final CardFiles files;
  private final TemplateFiller filler = new TemplateFiller();

  public CardPrinter(CardFiles files) {
    this.files = files;
  }

  /** A checklist's wording, filled with a policy's values. */
  public Loaded<CardView> checklist(
      String name, CardStrip strip, List<String> banners, PolicyView policy) {
    return files
        .read(name + ".yaml")
        .match(CardText::read, Loaded::<CardText>broken)
        .match(text -> new CardFiller(filler, policy).fill(text, strip, banners), Loaded::broken);
  }

  /** A checklist as an HTML page. */
  public Loaded<String> page(CardView card) {
    return page("card", "card.css", "card.vm", card, Fingerprint.of(card));
  }

  /** A tray as an HTML page. */
  public Loaded<String> page(TrayView tray) {
    return page("card", "card.css", "tray.vm", tray, Fingerprint.of(tray));
  }

  /** The sheet for those who approve, as an HTML page. */
  Loaded<String> page(SignOffView sheet) {
    return page("sheet", "sign-off.css", "sign-off.vm", sheet, Fingerprint.of(sheet));
  }

  private Loaded<String> page(
      String name, String style, String template, Record view, String fingerprint) {
    return files
        .read(style)
        .match(
            css ->
                files
                    .read(template)
                    .match(
                        page -> filled(name, page, css, view, fingerprint), Loaded::<String>broken),
            Loaded::broken);
  }

  private Loaded<String> filled(
      String name, SourceText page, SourceText css, Record view, String fingerprint) {
    Map<String, Object> tree = new LinkedHashMap<>();
    Map<String, Shape> shapes = new LinkedHashMap<>();
    tree.put(name, ViewTree.of(view));
    shapes.put(name, ViewTree.shape(view.getClass()));
    if (tree.get(name) instanceof Map<?, ?> parts
        && shapes.get(name) instanceof Shape.Parts shape
        && parts.get(STRIP) != null) {
      tree.put(STRIP, parts.get(STRIP));
      shapes.put(STRIP, shape.parts().get(STRIP));
    }
    tree.put("seal", Map.of("fingerprint", fingerprint));
    shapes.put("seal", new Shape.Parts(Map.of("fingerprint", Shape.Plain.WORDS)));
    return filler
        .page(page.span(0, page.text().length()), shapes, tree)
        .match(html -> Loaded.good(html.replace(STYLE, style(css))), Loaded::broken);
  }

  private static String style(SourceText css) {
    return "<style>\n" + css.text() + "</style>";
  }
}
