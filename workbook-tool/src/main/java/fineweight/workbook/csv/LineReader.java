package fineweight.workbook.csv;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/**
 * Reads a text table line by line. FastCSV finds the fields; this finds again, in the text that
 * went by, the very characters of each, and refuses where the two do not agree.
 */
final class LineReader implements Closeable {
  private static final int LONGEST_FIELD = 1 << 20;
  private static final int MOST_FIELDS = 1 << 14;
  private static final int LONGEST_TAIL = 100;

  private final String fileName;
  private final char delimiter;
  private final KeepingReader text;
  private final CsvReader<Parsed> records;
  private final Iterator<Parsed> iterator;
  private int rows;
  private long lastNumber;

  LineReader(String fileName, Reader text, char delimiter) {
    this.fileName = fileName;
    this.delimiter = delimiter;
    this.text = new KeepingReader(text);
    this.records =
        CsvReader.builder()
            .fieldSeparator(delimiter)
            .quoteCharacter(Field.QUOTE)
            .skipEmptyLines(false)
            .commentStrategy(CommentStrategy.NONE)
            .allowExtraFields(true)
            .allowMissingFields(true)
            .allowExtraCharsAfterClosingQuote(true)
            .maxBufferSize(LONGEST_FIELD)
            .build(new Collector(), this.text);
    this.iterator = records.iterator();
  }

  /**
   * The next line, or null after the last.
   *
   * @throws WorkbookRefusal if the text is no table; names the line
   */
  Line next() throws IOException, WorkbookRefusal {
    try {
      if (!iterator.hasNext()) {
        if (text.charAt(0) >= 0) {
          throw unclear(lastNumber + 1);
        }
        return null;
      }
      Parsed record = iterator.next();
      lastNumber = record.number;
      return cut(record);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    } catch (CsvParseException e) {
      throw new WorkbookRefusal(
          Kind.DAMAGED,
          ("%s is no table from line %d on: a quotation mark is not closed, or a field or line is"
                  + " too long; mend that line and run again.")
              .formatted(fileName, lastNumber + 1),
          e);
    }
  }

  private Line cut(Parsed record) throws IOException, WorkbookRefusal {
    List<Field> fields = new ArrayList<>(record.texts.size());
    int at = 0;
    for (int i = 0; i < record.texts.size(); i++) {
      Field field = field(at, record.texts.get(i), record.quoted.get(i));
      boolean last = i == record.texts.size() - 1;
      if (field == null || !last && text.charAt(at + field.raw().length()) != delimiter) {
        throw unclear(record.number);
      }
      fields.add(field);
      at += field.raw().length() + (last ? 0 : 1);
    }
    String end = lineEnd(at);
    text.take(at + end.length());
    return new Line(rows++, record.number, fields, end);
  }

  /** The field that begins at a place, or null if its text is not there. */
  private Field field(int at, String meaning, boolean quoted) throws IOException {
    if (!quoted) {
      return text.hasAt(at, meaning) && isBorder(at + meaning.length())
          ? Field.plain(meaning)
          : null;
    }
    // Some programs put blanks after the closing mark; they belong to the field.
    int shortest = Math.max(0, meaning.length() - LONGEST_TAIL);
    for (int inside = meaning.length(); inside >= shortest; inside--) {
      String body = Field.quoted(meaning.substring(0, inside)).raw();
      int length = body.length() + meaning.length() - inside;
      if (text.hasAt(at, body + meaning.substring(inside)) && isBorder(at + length)) {
        return quotedField(text.text(at, length), body.length());
      }
      if (inside > 0 && meaning.charAt(inside - 1) == Field.QUOTE) {
        // FastCSV takes a mark in the tail for an opening one only sometimes.
        return null;
      }
    }
    return null;
  }

  /**
   * @param bodyLength how much of the raw text is within quotation marks, these counted
   */
  private static Field quotedField(String raw, int bodyLength) {
    String inside = raw.substring(1, bodyLength - 1).replace("\"\"", "\"");
    return new Field(raw, inside + raw.substring(bodyLength), true);
  }

  private boolean isBorder(int at) throws IOException {
    int next = text.charAt(at);
    return next == delimiter || next == '\n' || next == '\r' || next == -1;
  }

  private String lineEnd(int at) throws IOException {
    return switch (text.charAt(at)) {
      case '\n' -> "\n";
      case '\r' -> text.charAt(at + 1) == '\n' ? "\r\n" : "\r";
      default -> "";
    };
  }

  private WorkbookRefusal unclear(long number) {
    return new WorkbookRefusal(
        Kind.DAMAGED,
        ("%s cannot be read as a table: a quotation mark in line %d is not closed or stands in the"
                + " wrong place; mend that line and run again.")
            .formatted(fileName, number));
  }

  @Override
  public void close() throws IOException {
    records.close();
    text.close();
  }

  /** What FastCSV found in a record. */
  private static final class Parsed {
    private final long number;
    private final List<String> texts = new ArrayList<>();
    private final List<Boolean> quoted = new ArrayList<>();

    Parsed(long number) {
      this.number = number;
    }
  }

  /** Takes the fields as they are found. */
  private static final class Collector extends AbstractBaseCsvCallbackHandler<Parsed> {
    private Parsed record;

    @Override
    protected void handleBegin(long startingLineNumber) {
      record = new Parsed(startingLineNumber);
    }

    @Override
    protected void handleField(
        int fieldIndex, char[] buffer, int offset, int length, boolean quoted) {
      if (fieldIndex >= MOST_FIELDS) {
        throw new CsvParseException("more fields than a sheet has columns");
      }
      record.texts.add(new String(buffer, offset, length));
      record.quoted.add(quoted);
    }

    @Override
    protected void handleEmpty() {
      record.texts.add("");
      record.quoted.add(false);
    }

    @Override
    protected Parsed buildRecord() {
      return record;
    }
  }
}
