package fineweight.workbook.xlsx.xml;

import com.fasterxml.aalto.UncheckedStreamException;
import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.CharConversionException;
import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.Arrays;
import java.util.zip.ZipException;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.XMLStreamReader2;

/**
 * Reads one XML part element by element, with the byte offsets of each tag. Refuses document type
 * declarations, entities of its own and deep nesting. The input must be UTF-8 without byte order
 * mark (see {@link PlainUtf8}).
 */
public final class XmlCursor implements Closeable {
  private static final int DEEPEST = 256;
  private static final InputFactoryImpl FACTORY = factory();

  private final XMLStreamReader2 reader;
  private final String part;
  private char[] text = new char[64];
  private int textLength;
  private int depth;
  private long passedOver;

  public XmlCursor(InputStream utf8, String part) {
    this.part = part;
    try {
      reader = (XMLStreamReader2) FACTORY.createXMLStreamReader(utf8);
    } catch (XMLStreamException e) {
      throw notXml(e);
    }
  }

  private static InputFactoryImpl factory() {
    InputFactoryImpl factory = new InputFactoryImpl();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, false);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
    return factory;
  }

  /**
   * Goes to the next start tag, end tag or text.
   *
   * @return one of {@link XMLStreamConstants}, END_DOCUMENT at the end
   */
  public int next() {
    try {
      while (true) {
        int event = reader.next();
        switch (event) {
          case XMLStreamConstants.START_ELEMENT:
            if (++depth > DEEPEST) {
              throw new DamageException("part " + part + " is nested too deeply");
            }
            return event;
          case XMLStreamConstants.END_ELEMENT:
            depth--;
            return event;
          case XMLStreamConstants.CHARACTERS,
          XMLStreamConstants.CDATA,
          XMLStreamConstants.SPACE,
          XMLStreamConstants.END_DOCUMENT:
            return event;
          case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE:
            throw new DamageException("part " + part + " declares entities of its own");
          default:
            break;
        }
      }
    } catch (XMLStreamException | UncheckedStreamException e) {
      throw notXml(e);
    }
  }

  /** Goes to the next start tag; false at the end tag of the element we are in or at the end. */
  public boolean nextChild() {
    for (int event = next(); ; event = next()) {
      if (event == XMLStreamConstants.START_ELEMENT) {
        return true;
      }
      if (event == XMLStreamConstants.END_ELEMENT || event == XMLStreamConstants.END_DOCUMENT) {
        return false;
      }
    }
  }

  /** Goes to the end tag of the element whose start tag we are at. */
  public void skip() {
    leave(depth - 1);
  }

  /** The same; tells whether any text stood in it. */
  public boolean skipText() {
    int outer = depth - 1;
    boolean any = false;
    while (depth > outer) {
      int event = next();
      any |=
          event == XMLStreamConstants.CHARACTERS
              || event == XMLStreamConstants.CDATA
              || event == XMLStreamConstants.SPACE;
    }
    return any;
  }

  /** Goes on until no more than so many elements are open. */
  public void leave(int outer) {
    while (depth > outer) {
      next();
    }
  }

  /** Goes to the end of the bytes, so that whoever watches them sees the end. */
  public void finish() {
    while (next() != XMLStreamConstants.END_DOCUMENT) {
      continue;
    }
  }

  /** Reads the text up to the end tag of the element we are at; of elements inside too. */
  public String text() {
    int outer = depth - 1;
    String text = "";
    StringBuilder more = null;
    while (depth > outer) {
      int event = next();
      if (event == XMLStreamConstants.CHARACTERS
          || event == XMLStreamConstants.CDATA
          || event == XMLStreamConstants.SPACE) {
        if (more == null && text.isEmpty()) {
          text = piece();
        } else {
          more = more == null ? new StringBuilder(text) : more;
          more.append(piece());
        }
      }
    }
    return more == null ? text : more.toString();
  }

  /** The text of the event we are at. */
  public String piece() {
    try {
      return reader.getText();
    } catch (UncheckedStreamException e) {
      throw notXml(e);
    }
  }

  /**
   * The characters of {@link #text}, without making a text of them.
   *
   * @param span valid until the next call
   */
  public void text(CharSpan span) {
    int outer = depth - 1;
    textLength = 0;
    while (depth > outer) {
      int event = next();
      if (event == XMLStreamConstants.CHARACTERS
          || event == XMLStreamConstants.CDATA
          || event == XMLStreamConstants.SPACE) {
        takePiece();
      }
    }
    span.set(text, 0, textLength);
  }

  private void takePiece() {
    try {
      int length = reader.getTextLength();
      if (textLength + length > text.length) {
        text = Arrays.copyOf(text, (textLength + length) * 2);
      }
      System.arraycopy(reader.getTextCharacters(), reader.getTextStart(), text, textLength, length);
      textLength += length;
    } catch (UncheckedStreamException e) {
      throw notXml(e);
    }
  }

  /**
   * An attribute's characters without making a text of them; false if that is not plain and the
   * text has to be asked for.
   *
   * @param span valid until the cursor goes on
   */
  public boolean attribute(int index, CharSpan span) {
    try {
      reader.getAttributeAs(index, span.taker());
      return span.isPlain();
    } catch (XMLStreamException e) {
      throw notXml(e);
    }
  }

  public int depth() {
    return depth;
  }

  public String name() {
    return reader.getLocalName();
  }

  public String prefix() {
    String prefix = reader.getPrefix();
    return prefix == null ? "" : prefix;
  }

  public String namespace() {
    String namespace = reader.getNamespaceURI();
    return namespace == null ? "" : namespace;
  }

  /** For attributes by number. */
  public XMLStreamReader2 attributes() {
    return reader;
  }

  /** An attribute without namespace; null if absent. */
  public String attribute(String name) {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      if (name.equals(reader.getAttributeLocalName(i)) && reader.getAttributePrefix(i).isEmpty()) {
        return reader.getAttributeValue(i);
      }
    }
    return null;
  }

  public boolean isEmptyElement() {
    try {
      return reader.isEmptyElement();
    } catch (XMLStreamException e) {
      throw notXml(e);
    }
  }

  /** So many bytes of the part, which come next, are not given to this cursor. */
  public void passOver(long bytes) {
    passedOver += bytes;
  }

  /** Where the tag that we are at begins. */
  public long start() {
    return passedOver + reader.getLocationInfo().getStartingByteOffset();
  }

  /** Behind the tag that we are at. */
  public long end() {
    try {
      return passedOver + reader.getLocationInfo().getEndingByteOffset();
    } catch (XMLStreamException e) {
      throw notXml(e);
    }
  }

  /** Trouble with the disk must not be called damage. */
  private DamageException notXml(Exception e) {
    Throwable cause = e instanceof XMLStreamException x ? x.getNestedException() : e.getCause();
    boolean damage =
        cause instanceof CharConversionException
            || cause instanceof CharacterCodingException
            || cause instanceof ZipException
            || cause instanceof EOFException;
    if (cause instanceof IOException trouble && !damage) {
      throw new UncheckedIOException(trouble);
    }
    return new DamageException("part " + part + " is not valid XML", e);
  }

  @Override
  public void close() {
    try {
      reader.closeCompletely();
    } catch (XMLStreamException e) {
      throw notXml(e);
    }
  }
}
