package fineweight.workbook.open;

import fineweight.workbook.Passwords;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** A workbook in a container that a password locks. */
final class EncryptedFile {
  private static final int LARGEST = 200 << 20;

  private EncryptedFile() {}

  /** The package inside, decrypted in memory. */
  static byte[] content(Path file, String password) throws IOException, WorkbookRefusal {
    try (POIFSFileSystem container = new POIFSFileSystem(file.toFile(), true)) {
      Decryptor decryptor = Decryptor.getInstance(new EncryptionInfo(container));
      if (!decryptor.verifyPassword(password)) {
        throw Passwords.wrong(file, null);
      }
      try (InputStream in = decryptor.getDataStream(container)) {
        byte[] content = in.readNBytes(LARGEST);
        if (content.length == LARGEST) {
          throw new WorkbookRefusal(
              Kind.UNSUPPORTED,
              "%s is encrypted and larger than 200 MB: save a copy without a password and run again on the copy."
                  .formatted(file.getFileName()));
        }
        return content;
      }
    } catch (GeneralSecurityException | EncryptedDocumentException e) {
      throw new WorkbookRefusal(
          Kind.PROTECTED,
          "%s is encrypted in a way that cannot be read here: save a copy without a password and run again on the copy."
              .formatted(file.getFileName()),
          e);
    }
  }
}
