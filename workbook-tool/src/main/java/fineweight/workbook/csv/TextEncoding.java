package fineweight.workbook.csv;

import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * How the bytes of a text file are to be read. Reading and writing again gives the same bytes: what
 * does not decode without loss is not taken. Immutable.
 *
 * @param marked whether the file begins with a byte order mark
 */
record TextEncoding(Charset charset, boolean marked) {
  private static final char MARK = '\uFEFF';

  /**
   * Latin 1 comes last: it gives every byte a character and takes the few bytes that Windows-1252
   * leaves open.
   */
  private static final List<Charset> WITHOUT_MARK =
      List.of(StandardCharsets.UTF_8, Charset.forName("windows-1252"), StandardCharsets.ISO_8859_1);

  /**
   * Reads the whole file.
   *
   * @throws WorkbookRefusal if it is not text
   */
  static TextEncoding of(Path file) throws IOException, WorkbookRefusal {
    TextEncoding marked = byMark(file);
    if (marked != null) {
      if (!marked.fits(file)) {
        throw new WorkbookRefusal(
            Kind.DAMAGED,
            "%s says that its text is %s, and it is not: save it anew from the program it came from."
                .formatted(file.getFileName(), marked.charset));
      }
      return marked;
    }
    for (Charset charset : WITHOUT_MARK) {
      TextEncoding encoding = new TextEncoding(charset, false);
      if (encoding.fits(file)) {
        return encoding;
      }
    }
    throw new IllegalStateException("Latin 1 reads every byte");
  }

  private static TextEncoding byMark(Path file) throws IOException {
    byte[] start;
    try (InputStream in = Files.newInputStream(file)) {
      start = in.readNBytes(3);
    }
    for (Charset charset :
        List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
      byte[] mark = String.valueOf(MARK).getBytes(charset);
      if (start.length >= mark.length
          && Arrays.equals(mark, 0, mark.length, start, 0, mark.length)) {
        return new TextEncoding(charset, true);
      }
    }
    return null;
  }

  private boolean fits(Path file) throws IOException, WorkbookRefusal {
    char[] text = new char[1 << 14];
    int line = 1;
    try (Reader reader = reader(file)) {
      for (int count = reader.read(text); count >= 0; count = reader.read(text)) {
        for (int i = 0; i < count; i++) {
          if (text[i] == '\n') {
            line++;
          } else if (text[i] == 0) {
            throw new WorkbookRefusal(
                Kind.DAMAGED,
                ("%s is not a text table: line %d holds a zero byte; export it again as CSV in"
                        + " UTF-8.")
                    .formatted(file.getFileName(), line));
          }
        }
      }
      return true;
    } catch (CharacterCodingException e) {
      return false;
    }
  }

  /** The text after the byte order mark. */
  Reader reader(Path file) throws IOException {
    Reader reader =
        new BufferedReader(
            new InputStreamReader(
                Files.newInputStream(file),
                charset
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)));
    if (marked && reader.read() != MARK) {
      reader.close();
      throw new IOException("the byte order mark is gone");
    }
    return reader;
  }

  /** Has written the byte order mark if the file has one. */
  Writer writer(OutputStream out) throws IOException {
    Writer writer = new OutputStreamWriter(out, charset.newEncoder());
    if (marked) {
      writer.write(MARK);
    }
    return writer;
  }

  /** The text with a question mark for each character that this encoding does not have. */
  String writable(String text) {
    CharsetEncoder encoder = charset.newEncoder();
    if (encoder.canEncode(text)) {
      return text;
    }
    StringBuilder writable = new StringBuilder();
    text.codePoints()
        .mapToObj(Character::toString)
        .forEach(one -> writable.append(encoder.canEncode(one) ? one : "?"));
    return writable.toString();
  }
}
