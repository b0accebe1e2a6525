package fineweight.workbook.open;

import fineweight.workbook.Passwords;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.nio.file.Path;

/** Opens a file of one kind, which its content has shown. */
@FunctionalInterface
public interface Opener {
  Workbook open(Path file) throws WorkbookRefusal;

  /**
   * Opens what an encrypted file holds, to be read and not written.
   *
   * @param content the decrypted bytes
   * @throws WorkbookRefusal also if the kind is never found in an encrypted file
   */
  default Workbook openDecrypted(Path file, byte[] content) throws WorkbookRefusal {
    throw new WorkbookRefusal(WorkbookRefusal.Kind.PROTECTED, Passwords.missing(file));
  }
}
