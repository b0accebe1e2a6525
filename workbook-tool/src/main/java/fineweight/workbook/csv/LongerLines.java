package fineweight.workbook.csv;

import fineweight.workbook.WorkbookRefusal;
import java.io.Closeable;
import java.io.IOException;
import java.util.List;

/**
 * The lines of a text table and behind them blank ones, up to a row. The last line ends as the
 * file's last line did, with or without a line break.
 */
final class LongerLines implements Closeable {
  private static final String DEFAULT_BREAK = "\r\n";

  private final LineReader lines;
  private final int lastRow;
  private Line ahead;
  private String lineBreak = "";
  private String lastEnd = "";
  private int row;

  /**
   * @param lastRow from 0; a table that is longer stays as it is
   */
  LongerLines(LineReader lines, int lastRow) throws IOException, WorkbookRefusal {
    this.lines = lines;
    this.lastRow = lastRow;
    ahead = lines.next();
  }

  /** The next line, or null after the last. */
  Line next() throws IOException, WorkbookRefusal {
    if (ahead == null) {
      return row <= lastRow ? blank() : null;
    }
    Line line = ahead;
    ahead = lines.next();
    row = line.row() + 1;
    lineBreak = lineBreak.isEmpty() ? line.end() : lineBreak;
    if (ahead == null && row <= lastRow) {
      lastEnd = line.end();
      return new Line(line.row(), line.number(), line.fields(), lineBreak());
    }
    return line;
  }

  private Line blank() {
    String end = row == lastRow ? lastEnd : lineBreak();
    return new Line(row++, 0, List.of(Field.plain("")), end);
  }

  private String lineBreak() {
    return lineBreak.isEmpty() ? DEFAULT_BREAK : lineBreak;
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
