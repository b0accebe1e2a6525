package fineweight.tool;

import fineweight.terminal.Screen;
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
 * @param screen where results are seen
 */
record Surroundings(
    PrintWriter out,
    PrintWriter err,
    Clock clock,
    Workbooks workbooks,
    BufferedReader in,
    Screen screen) {
  /** Surroundings in which nobody types, and results go to no terminal. */
  Surroundings(PrintWriter out, PrintWriter err, Clock clock, Workbooks workbooks) {
    this(out, err, clock, workbooks, new BufferedReader(Reader.nullReader()), Screen.NONE);
  }

  static Surroundings real(PrintWriter out, PrintWriter err, Screen screen) {
    SafeSave save = SafeSave.onDisk();
    return new Surroundings(
        out,
        err,
        Clock.systemDefaultZone(),
        AnyWorkbook.of(XlsxWorkbook.opener(save), save),
        new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())),
        screen);
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  /** A coin can be dated next year: mints begin early. */
  int latestYear() {
    return today().getYear() + 1;
  }
}
