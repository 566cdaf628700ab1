package org.tidemark.print;

import org.commonmark.node.Image;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;

/** Filled guidance in the two forms that people read: a piece of a web page, and plain text. */
public final class MarkdownPage {
  private final Parser parser = Parser.builder().build();
  private final HtmlRenderer html =
      HtmlRenderer.builder()
          .escapeHtml(true)
          .sanitizeUrls(true)
          .urlSanitizer(new SafeLinks())
          .nodeRendererFactory(ImageAsWords::new)
          .build();

  /**
   * HTML for the inside of a page: raw HTML shown as text, no pictures, links only to safe places.
   */
  public String html(String markdown) {
    return html.render(parser.parse(markdown));
  }

  /** Text for a terminal of 80 columns; headings underlined, steps numbered. */
  public String text(String markdown) {
    return new PlainText().of(parser.parse(markdown));
  }

  /** A picture is its own description: a page brings nothing in from elsewhere. */
  private record ImageAsWords(HtmlNodeRendererContext context) implements NodeRenderer {
    @Override
    public java.util.Set<Class<? extends org.commonmark.node.Node>> getNodeTypes() {
      return java.util.Set.of(Image.class);
    }

    @Override
    public void render(org.commonmark.node.Node image) {
      for (var child = image.getFirstChild(); child != null; child = child.getNext()) {
        context.render(child);
      }
    }
  }
}
