package fineweight.workbook.xlsx.xml;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.io.SequenceInputStream;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.io.input.ReaderInputStream;

/**
 * XML bytes as UTF-8 without byte order mark. UTF-8 and ASCII pass unchanged, because the parser's
 * byte offsets hold for these only; every other encoding is converted on the way.
 */
public final class PlainUtf8 {
  private static final int LOOK = 256;
  private static final Pattern DECLARED =
      Pattern.compile("encoding\\s*=\\s*[\"']([A-Za-z0-9._-]+)[\"']");
  private static final String DECLARATION =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>";

  private PlainUtf8() {}

  public static InputStream of(InputStream raw) throws IOException {
    PushbackInputStream in = new PushbackInputStream(raw, LOOK);
    byte[] start = in.readNBytes(LOOK);
    Charset charset = charsetOf(start);
    int mark = markLength(start);
    in.unread(start, mark, start.length - mark);
    if (charset.equals(StandardCharsets.UTF_8)) {
      return in;
    }
    return converted(in, charset);
  }

  private static Charset charsetOf(byte[] start) {
    int first = at(start, 0);
    int second = at(start, 1);
    if (first == 0xFE && second == 0xFF || first == 0 && second == '<') {
      return StandardCharsets.UTF_16BE;
    }
    if (first == 0xFF && second == 0xFE || first == '<' && second == 0) {
      return StandardCharsets.UTF_16LE;
    }
    String head = new String(start, StandardCharsets.ISO_8859_1);
    int end = head.indexOf("?>");
    Matcher declared = DECLARED.matcher(end < 0 ? "" : head.substring(0, end));
    return declared.find() ? named(declared.group(1)) : StandardCharsets.UTF_8;
  }

  private static Charset named(String name) {
    String upper = name.toUpperCase(Locale.ROOT);
    if (upper.equals("UTF-8") || upper.equals("UTF8") || upper.equals("US-ASCII")) {
      return StandardCharsets.UTF_8;
    }
    try {
      return Charset.forName(name);
    } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
      throw new DamageException("a part is in the unknown encoding " + name, e);
    }
  }

  private static int markLength(byte[] start) {
    int first = at(start, 0);
    int second = at(start, 1);
    if (first == 0xEF && second == 0xBB && at(start, 2) == 0xBF) {
      return 3;
    }
    return first == 0xFE && second == 0xFF || first == 0xFF && second == 0xFE ? 2 : 0;
  }

  private static int at(byte[] bytes, int index) {
    return index < bytes.length ? bytes[index] & 0xFF : -1;
  }

  private static InputStream converted(InputStream in, Charset charset) throws IOException {
    Reader reader =
        new InputStreamReader(
            in,
            charset
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT));
    String kept = withoutDeclaration(reader);
    return new SequenceInputStream(
        new ByteArrayInputStream((DECLARATION + kept).getBytes(StandardCharsets.UTF_8)),
        ReaderInputStream.builder().setReader(reader).setCharset(StandardCharsets.UTF_8).get());
  }

  /** Reads the declaration, if there is one, and returns what was read behind it. */
  private static String withoutDeclaration(Reader reader) throws IOException {
    StringBuilder head = new StringBuilder();
    for (int c = reader.read(); c >= 0; c = reader.read()) {
      head.append((char) c);
      if (head.length() == 5 && !head.toString().equals("<?xml")) {
        return head.toString();
      }
      if (c == '>' || head.length() > LOOK) {
        break;
      }
    }
    return head.toString().startsWith("<?xml") ? "" : head.toString();
  }
}
