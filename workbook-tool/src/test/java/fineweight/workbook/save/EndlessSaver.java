package fineweight.workbook.save;

import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** A program that replaces a file again and again, until it is killed. */
final class EndlessSaver {
  private static final int LINES = 4000;

  private EndlessSaver() {}

  public static void main(String[] arguments) throws IOException, WorkbookRefusal {
    Path file = Path.of(arguments[0]);
    for (long state = Long.parseLong(arguments[1]); ; state++) {
      byte[] content = content(state);
      SafeSave.onDisk()
          .replace(
              file,
              FileFingerprint.of(file),
              out -> inPieces(content, out),
              written -> requireWhole(written));
      System.out.println("saved");
    }
  }

  /** Every line tells the state, so that a mixture or a cut shows. */
  static byte[] content(long state) {
    return ("state " + state + "\n").repeat(LINES).getBytes(StandardCharsets.US_ASCII);
  }

  static void requireWhole(Path file) throws IOException {
    byte[] found = Files.readAllBytes(file);
    String first = new String(found, 0, Math.min(found.length, 30), StandardCharsets.US_ASCII);
    long state = Long.parseLong(first.lines().findFirst().orElse("").replaceFirst("state ", ""));
    if (!Arrays.equals(found, content(state))) {
      throw new IOException("neither the old nor the new content");
    }
  }

  private static void inPieces(byte[] content, OutputStream out) throws IOException {
    for (int at = 0; at < content.length; at += 5000) {
      out.write(content, at, Math.min(5000, content.length - at));
      out.flush();
    }
  }
}
