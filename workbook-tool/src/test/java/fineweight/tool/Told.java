package fineweight.tool;

import fineweight.workbook.open.AnyWorkbook;
import fineweight.workbook.save.SafeSave;
import fineweight.workbook.xlsx.XlsxWorkbook;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** What the command said to some words, on a fixed day. */
record Told(int code, String out, String err) {
  private static final Clock DAY =
      Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

  static Told by(Object... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] args = new String[words.length];
    for (int i = 0; i < words.length; i++) {
      args[i] = words[i].toString();
    }
    int code = Main.run(args, surroundings(out, err));
    return new Told(code, out.toString(), err.toString());
  }

  static Surroundings surroundings(StringWriter out, StringWriter err) {
    SafeSave save = SafeSave.onDisk();
    return new Surroundings(
        new PrintWriter(out, true),
        new PrintWriter(err, true),
        DAY,
        AnyWorkbook.of(file -> XlsxWorkbook.open(file, save), save));
  }
}
