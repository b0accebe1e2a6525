package fineweight.workbook.save;

/** Replaces a file in one step. */
public interface FileReplacement {
  /** Writes the complete new content to a stream. */
  @FunctionalInterface
  interface Writer {
    void writeTo(java.io.OutputStream out)
        throws java.io.IOException, fineweight.workbook.WorkbookRefusal;
  }

  /** Reads the written copy back and refuses if it is not what was meant. */
  @FunctionalInterface
  interface Check {
    void check(java.nio.file.Path written)
        throws java.io.IOException, fineweight.workbook.WorkbookRefusal;
  }

  /**
   * @return where the former file is kept
   */
  java.nio.file.Path replace(
      java.nio.file.Path target, FileFingerprint asRead, Writer writer, Check check)
      throws fineweight.workbook.WorkbookRefusal;
}
