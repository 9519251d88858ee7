package ribband.feed;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a feed as Atom 1.0 (RFC 4287); for one feed. */
final class AtomFeed {
  private static final String NAMESPACE = "http://www.w3.org/2005/Atom";

  private final XMLStreamWriter xml;

  private AtomFeed(XMLStreamWriter xml) {
    this.xml = xml;
  }

  /** The feed in UTF-8. */
  static byte[] of(Feed feed) {
    StringWriter text = new StringWriter();
    try {
      // Java's own: what else stands on the class path might write other bytes.
      XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
      new AtomFeed(xml).feed(feed);
      xml.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("feed of " + feed.home(), e);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void feed(Feed feed) throws XMLStreamException {
    xml.writeStartDocument("UTF-8", "1.0");
    line();
    xml.writeStartElement("feed");
    xml.writeDefaultNamespace(NAMESPACE);
    line();
    // The site's own address never changes while it stands there, which is what an id asks for.
    element("id", feed.home());
    element("title", feed.title());
    if (!feed.what().isEmpty()) {
      element("subtitle", feed.what());
    }
    element("updated", feed.updated().toString());
    author(feed.title());
    link("self", "application/atom+xml", feed.atom());
    link("alternate", "text/html", feed.home());
    element("icon", feed.icon());
    element("generator", feed.generator());
    for (Item item : feed.items()) {
      entry(item);
    }
    xml.writeEndElement();
    line();
    xml.writeEndDocument();
  }

  private void entry(Item item) throws XMLStreamException {
    xml.writeStartElement("entry");
    line();
    element("id", item.id());
    element("title", item.title());
    element("published", item.dated().toString());
    element("updated", item.dated().toString());
    link("alternate", "text/html", item.address());
    for (Item.Tag phase : item.phases()) {
      xml.writeEmptyElement("category");
      xml.writeAttribute("term", phase.term());
      xml.writeAttribute("label", phase.label());
      line();
    }
    xml.writeStartElement("content");
    xml.writeAttribute("type", "html");
    xml.writeCharacters(item.html());
    xml.writeEndElement();
    line();
    xml.writeEndElement();
    line();
  }

  /** No person is named that the builder did not name: the boat stands in. */
  private void author(String name) throws XMLStreamException {
    xml.writeStartElement("author");
    element("name", name);
    xml.writeEndElement();
    line();
  }

  private void link(String rel, String type, String href) throws XMLStreamException {
    xml.writeEmptyElement("link");
    xml.writeAttribute("rel", rel);
    xml.writeAttribute("type", type);
    xml.writeAttribute("href", href);
    line();
  }

  private void element(String name, String text) throws XMLStreamException {
    xml.writeStartElement(name);
    xml.writeCharacters(text);
    xml.writeEndElement();
    line();
  }

  private void line() throws XMLStreamException {
    xml.writeCharacters("\n");
  }
}
