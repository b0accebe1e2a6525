package fineweight.workbook.save;

import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;

/** Replaces a file in one step. */
public interface FileReplacement {
  /** Writes the complete new content to a stream. */
  @FunctionalInterface
  interface Writer {
    void writeTo(OutputStream out) throws IOException, WorkbookRefusal;
  }

  /** Reads the written copy back and refuses if it is not what was meant. */
  @FunctionalInterface
  interface Check {
    void check(Path written) throws IOException, WorkbookRefusal;
  }

  /** Whether the written copy is given to the check: else nobody need prepare for it. */
  default boolean checks() {
    return true;
  }

  /**
   * Either the new content is in place completely, or this throws and the file is as it was.
   *
   * @param target the file; where it is a symbolic link, the file behind it is replaced
   * @param asRead the file as it was when its content was taken
   * @param check is given the complete copy before it takes the file's place
   * @return where the former file is kept
   * @throws WorkbookRefusal if the file is in use, has changed since, or cannot be written
   */
  Path replace(Path target, FileFingerprint asRead, Writer writer, Check check)
      throws WorkbookRefusal;
}
