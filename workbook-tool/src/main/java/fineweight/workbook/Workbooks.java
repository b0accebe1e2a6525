package fineweight.workbook;

import java.nio.file.Path;

/** Opens a file of any kind that we know. */
public interface Workbooks {
  /**
   * @throws WorkbookRefusal if the file is absent, damaged, harmful, encrypted or of a kind that we
   *     do not know
   */
  Workbook open(Path file) throws WorkbookRefusal;

  /**
   * The same, that opens encrypted files too, for reading only. Their content is decrypted in
   * memory and never stands on the disk.
   */
  default Workbooks with(Passwords passwords) {
    return this;
  }
}
