package org.tidemark.guide;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.LineBreakRendering;
import org.commonmark.renderer.text.TextContentRenderer;

/** Reads Markdown as plain text under its headings. */
final class PlainText extends AbstractVisitor {
  private static final Parser PARSER = Parser.builder().build();
  private static final TextContentRenderer RENDERER =
      TextContentRenderer.builder().lineBreakRendering(LineBreakRendering.STRIP).build();

  private final List<Section> sections = new ArrayList<>();
  private final List<String> blocks = new ArrayList<>();
  private String heading = "";

  private PlainText() {}

  static List<Section> sections(String markdown) {
    PlainText reader = new PlainText();
    PARSER.parse(markdown).accept(reader);
    reader.close();
    return List.copyOf(reader.sections);
  }

  @Override
  public void visit(Heading node) {
    close();
    String rendered = text(node);
    // The renderer ends every heading with a colon of its own.
    heading = rendered.substring(0, rendered.length() - 1);
  }

  @Override
  public void visit(Paragraph node) {
    blocks.add(text(node));
  }

  private static String text(Node node) {
    return RENDERER.render(node).strip();
  }

  private void close() {
    if (!heading.isEmpty() || !blocks.isEmpty()) {
      sections.add(new Section(heading, blocks));
      blocks.clear();
    }
  }
}
