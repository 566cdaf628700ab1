package org.tidemark.report;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes XML, one element a line, always with the same line ends. */
final class Xml {
  private static final String INDENT = "  ";

  private final XMLStreamWriter writer;
  private int depth;

  private Xml(XMLStreamWriter writer) {
    this.writer = writer;
  }

  /** Writes something. */
  interface Writing {
    void to(Xml xml) throws XMLStreamException;
  }

  /** A document as text, with a line end behind it. */
  static String document(Writing root) {
    StringWriter text = new StringWriter();
    try {
      XMLStreamWriter writer = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
      writer.writeStartDocument("UTF-8", "1.0");
      root.to(new Xml(writer));
      writer.writeEndDocument();
      writer.close();
    } catch (XMLStreamException impossible) {
      throw new IllegalStateException("writing to memory failed", impossible);
    }
    return text.append('\n').toString();
  }

  /** An element with others in it; attributes stand as name and value, one after the other. */
  void element(String name, Writing inside, String... attributes) throws XMLStreamException {
    newLine();
    writer.writeStartElement(name);
    attributes(attributes);
    depth++;
    inside.to(this);
    depth--;
    newLine();
    writer.writeEndElement();
  }

  void empty(String name, String... attributes) throws XMLStreamException {
    newLine();
    writer.writeEmptyElement(name);
    attributes(attributes);
  }

  /** An element that holds a text. */
  void text(String name, String text) throws XMLStreamException {
    newLine();
    writer.writeStartElement(name);
    writer.writeCharacters(sound(text));
    writer.writeEndElement();
  }

  /**
   * An element whose only child is the element {@code text}, on one line, as cells of tables are.
   */
  void cell(String name, String text, String... attributes) throws XMLStreamException {
    newLine();
    writer.writeStartElement(name);
    attributes(attributes);
    writer.writeStartElement("text");
    writer.writeCharacters(sound(text));
    writer.writeEndElement();
    writer.writeEndElement();
  }

  private void attributes(String... attributes) throws XMLStreamException {
    for (int i = 0; i < attributes.length; i += 2) {
      writer.writeAttribute(attributes[i], sound(attributes[i + 1]).replaceAll("\\s+", " "));
    }
  }

  private void newLine() throws XMLStreamException {
    writer.writeCharacters("\n" + INDENT.repeat(depth));
  }

  /** XML has no way to write some characters, not even escaped; each becomes a sign for it. */
  private static String sound(String text) {
    StringBuilder sound = new StringBuilder();
    text.codePoints().map(c -> allowed(c) ? c : 0xFFFD).forEach(sound::appendCodePoint);
    return sound.toString();
  }

  private static boolean allowed(int c) {
    return c == '\t'
        || c == '\n'
        || (c >= ' ' && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }
}
