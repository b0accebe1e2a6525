package fineweight.giveaway;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import javax.xml.stream.XMLEventReader;
import javax.xml.stream.XMLEventWriter;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.events.XMLEvent;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;

/** A sheet without its cells: there can be a million of them, and nothing else is large. */
final class SheetFrame {
  private SheetFrame() {}

  /** The parser that neither fetches nor expands anything. */
  static XMLInputFactory parser() {
    XMLInputFactory factory = XMLInputFactory.newInstance();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    return factory;
  }

  static XmlOptions reading() {
    return new XmlOptions()
        .setLoadStripComments()
        .setLoadStripProcinsts()
        .setDisallowDocTypeDeclaration(true);
  }

  static WorksheetDocument read(InputStream part) throws IOException {
    try {
      byte[] bare = withoutCells(part);
      return (WorksheetDocument)
          XmlObject.Factory.parse(
              new java.io.ByteArrayInputStream(bare),
              reading().setDocumentType(WorksheetDocument.type));
    } catch (XMLStreamException | XmlException damaged) {
      throw new IOException("a sheet cannot be read", damaged);
    }
  }

  private static byte[] withoutCells(InputStream part) throws XMLStreamException {
    ByteArrayOutputStream bare = new ByteArrayOutputStream();
    XMLEventReader reader = parser().createXMLEventReader(part);
    XMLEventWriter writer = XMLOutputFactory.newInstance().createXMLEventWriter(bare, "UTF-8");
    int depth = 0;
    while (reader.hasNext()) {
      XMLEvent event = reader.nextEvent();
      depth -= depth > 0 && event.isEndElement() ? 1 : 0;
      if (depth == 0 && event.getEventType() != XMLEvent.DTD) {
        writer.add(event);
      }
      boolean cells =
          event.isStartElement()
              && event.asStartElement().getName().getLocalPart().equals("sheetData");
      depth += depth > 0 && event.isStartElement() || cells ? 1 : 0;
    }
    writer.close();
    reader.close();
    return bare.toByteArray();
  }
}
