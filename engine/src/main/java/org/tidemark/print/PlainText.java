package org.tidemark.print;

import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.Document;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.node.ThematicBreak;

/** Writes a parsed text for a terminal. */
final class PlainText extends AbstractVisitor {
  private static final int WIDTH = 80;

  private final StringBuilder out = new StringBuilder();
  private final StringBuilder words = new StringBuilder();

  /** What stands before the first line of the next block, and before its later lines. */
  private String first = "";

  private String later = "";

  String of(Node document) {
    document.accept(this);
    return out.toString();
  }

  @Override
  public void visit(Heading heading) {
    visitChildren(heading);
    String line = taken();
    blankLine();
    wrap(line);
    String mark = heading.getLevel() == 1 ? "=" : "-";
    out.append(later).append(mark.repeat(Math.min(line.length(), WIDTH - later.length())));
    out.append('\n');
  }

  @Override
  public void visit(Paragraph paragraph) {
    visitChildren(paragraph);
    if (!isTight(paragraph)) {
      blankLine();
    }
    wrap(taken());
  }

  private static boolean isTight(Paragraph paragraph) {
    return paragraph.getParent() instanceof ListItem item
        && item.getParent() instanceof ListBlock list
        && list.isTight()
        && (item.getPrevious() != null || item.getFirstChild() != paragraph);
  }

  @Override
  public void visit(BulletList list) {
    for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
      item(item, "- ");
    }
  }

  @Override
  public void visit(OrderedList list) {
    Integer start = list.getMarkerStartNumber();
    int number = start == null ? 1 : start;
    for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
      item(item, number++ + ". ");
    }
  }

  private void item(Node item, String mark) {
    String before = later;
    first = before + mark;
    later = before + " ".repeat(mark.length());
    visitChildren(item);
    if (first.endsWith(mark) && !first.equals(later)) {
      wrap("");
    }
    first = before;
    later = before;
  }

  @Override
  public void visit(BlockQuote quote) {
    String before = later;
    first = before + "| ";
    later = before + "| ";
    visitChildren(quote);
    first = before;
    later = before;
  }

  @Override
  public void visit(FencedCodeBlock code) {
    lines(code.getLiteral());
  }

  @Override
  public void visit(IndentedCodeBlock code) {
    lines(code.getLiteral());
  }

  @Override
  public void visit(HtmlBlock html) {
    lines(html.getLiteral());
  }

  private void lines(String literal) {
    blankLine();
    literal.lines().forEach(line -> wrap(visible(line)));
  }

  @Override
  public void visit(ThematicBreak rule) {
    blankLine();
    wrap("-".repeat(WIDTH / 2));
  }

  @Override
  public void visit(Text text) {
    words.append(visible(text.getLiteral()));
  }

  @Override
  public void visit(Code code) {
    words.append(visible(code.getLiteral()));
  }

  @Override
  public void visit(HtmlInline html) {
    words.append(visible(html.getLiteral()));
  }

  @Override
  public void visit(SoftLineBreak line) {
    words.append(' ');
  }

  @Override
  public void visit(HardLineBreak line) {
    words.append(' ');
  }

  @Override
  public void visit(Document document) {
    visitChildren(document);
  }

  /** A terminal obeys control characters; a text from a file must not command it. */
  private static String visible(String text) {
    StringBuilder safe = new StringBuilder(text.length());
    text.chars().forEach(c -> safe.append(Harmless.visible((char) c)));
    return safe.toString();
  }

  private String taken() {
    String text = words.toString().strip();
    words.setLength(0);
    return text;
  }

  private void blankLine() {
    if (!out.isEmpty() && !out.toString().endsWith("\n\n")) {
      out.append('\n');
    }
  }

  private void wrap(String text) {
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : text.split(" +", -1)) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        out.append(line.toString().stripTrailing()).append('\n');
        line = new StringBuilder(later);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    out.append(line.toString().stripTrailing()).append('\n');
    first = later;
  }
}
