package dev.offtake.desk.drawing;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes SVG elements; whatever a name holds, the document stays well-formed. */
final class Svg {
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";

  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter xml;

  /** Something that the writer underneath may refuse. */
  private interface Step {
    void take() throws XMLStreamException;
  }

  Svg() {
    try {
      xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
    } catch (XMLStreamException e) {
      throw new IllegalStateException("no XML writer", e);
    }
  }

  private Svg step(Step step) {
    try {
      step.take();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("the drawing cannot be written", e);
    }
    return this;
  }

  /** Opens the outermost element. */
  Svg root() {
    return open("svg").attribute("xmlns", NAMESPACE);
  }

  /** Opens an element with names and values of attributes by turns. */
  Svg open(String element, String... attributes) {
    step(() -> xml.writeStartElement(element));
    for (int i = 0; i + 1 < attributes.length; i += 2) {
      attribute(attributes[i], attributes[i + 1]);
    }
    return this;
  }

  /** An element without content. */
  Svg leaf(String element, String... attributes) {
    return open(element, attributes).close();
  }

  Svg attribute(String name, String value) {
    return step(() -> xml.writeAttribute(name, clean(value)));
  }

  Svg text(String value) {
    return step(() -> xml.writeCharacters(clean(value)));
  }

  /** Closes the innermost element, with an end tag of its own as HTML readers need it. */
  Svg close() {
    return step(
        () -> {
          xml.writeCharacters("");
          xml.writeEndElement();
        });
  }

  /** What was written. */
  String written() {
    return text.toString();
  }

  /** Characters that XML 1.0 cannot carry become the replacement character. */
  private static String clean(String value) {
    StringBuilder clean = new StringBuilder(value.length());
    value.codePoints().map(c -> allowed(c) ? c : 0xFFFD).forEach(clean::appendCodePoint);
    return clean.toString();
  }

  private static boolean allowed(int c) {
    boolean low = c == '\t' || c == '\n' || (c >= 0x20 && c < 0x7F);
    return low || (c >= 0xA0 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c > 0xFFFF;
  }
}
