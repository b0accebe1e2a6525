package fineweight.tool;

import fineweight.workbook.Workbooks;
import fineweight.workbook.open.AnyWorkbook;
import fineweight.workbook.save.SafeSave;
import fineweight.workbook.xlsx.XlsxWorkbook;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.Charset;
import java.time.Clock;
import java.time.LocalDate;

/**
 * What a command works with from outside. Immutable.
 *
 * @param out for results
 * @param err for complaints
 * @param clock tells the day
 * @param workbooks opens files
 * @param in what a person types
 */
record Surroundings(
    PrintWriter out, PrintWriter err, Clock clock, Workbooks workbooks, BufferedReader in) {
  /** Surroundings in which nobody types. */
  Surroundings(PrintWriter out, PrintWriter err, Clock clock, Workbooks workbooks) {
    this(out, err, clock, workbooks, new BufferedReader(Reader.nullReader()));
  }

  static Surroundings real(PrintWriter out, PrintWriter err) {
    SafeSave save = SafeSave.onDisk();
    return new Surroundings(
        out,
        err,
        Clock.systemDefaultZone(),
        AnyWorkbook.of(file -> XlsxWorkbook.open(file, save), save),
        new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())));
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  /** A coin can be dated next year: mints begin early. */
  int latestYear() {
    return today().getYear() + 1;
  }
}
