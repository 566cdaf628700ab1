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
    return page("card.vm", card, Fingerprint.of(card));
  }

  /** A tray as an HTML page. */
  public Loaded<String> page(TrayView tray) {
    return page("tray.vm", tray, Fingerprint.of(tray));
  }

  private Loaded<String> page(String template, Record view, String fingerprint) {
    return files
        .read("card.css")
        .match(
            css ->
                files
                    .read(template)
                    .match(page -> filled(page, css, view, fingerprint), Loaded::<String>broken),
            Loaded::broken);
  }

  private Loaded<String> filled(SourceText page, SourceText css, Record view, String fingerprint) {
    Map<String, Object> tree = new LinkedHashMap<>();
    Map<String, Shape> shapes = new LinkedHashMap<>();
    tree.put("card", ViewTree.of(view));
    shapes.put("card", ViewTree.shape(view.getClass()));
    if (tree.get("card") instanceof Map<?, ?> parts
        && shapes.get("card") instanceof Shape.Parts shape) {
      tree.put("strip", parts.get("strip"));
      shapes.put("strip", shape.parts().get("strip"));
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
