package fineweight.workbook.csv;

import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.nio.file.Path;

/**
 * How a text table is written. Immutable.
 *
 * @param delimiter between fields
 * @param decimalSign in its numbers: a point or a comma
 */
record Dialect(TextEncoding encoding, char delimiter, char decimalSign) {
  /**
   * Finds it out from the file's first lines; the encoding from all of it.
   *
   * @throws WorkbookRefusal if the file is not text
   */
  static Dialect of(Path file) throws IOException, WorkbookRefusal {
    TextEncoding encoding = TextEncoding.of(file);
    Sample sample = Sample.of(file, encoding);
    return new Dialect(encoding, sample.delimiter(), sample.decimalSign());
  }

  LineReader lines(Path file) throws IOException {
    return new LineReader(file.getFileName().toString(), encoding.reader(file), delimiter);
  }
}
