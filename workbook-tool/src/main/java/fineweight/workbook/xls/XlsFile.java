package fineweight.workbook.xls;

import fineweight.workbook.Passwords;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.save.FileFingerprint;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.record.BOFRecord;
import org.apache.poi.hssf.record.EOFRecord;
import org.apache.poi.hssf.record.FilePassRecord;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.util.LittleEndian;

/** A file of that kind, whole in memory. Immutable. */
final class XlsFile {
  private static final long LARGEST = 100L << 20;
  static final String CONTENT = "Workbook";
  private static final int BIFF8 = 0x0600;
  private static final int RECORD_HEADER = 4;
  private static final int LONGEST_RECORD = 8224;

  private final Path path;
  private final FileFingerprint fingerprint;
  private final byte[] bytes;

  /** Null if it is not encrypted. */
  private final String password;

  private XlsFile(Path path, FileFingerprint fingerprint, byte[] bytes, String password) {
    this.path = path;
    this.fingerprint = fingerprint;
    this.bytes = bytes;
    this.password = password;
  }

  /**
   * @param passwords asked if it is encrypted
   */
  static XlsFile read(Path path, Passwords passwords) throws IOException, WorkbookRefusal {
    if (Files.size(path) > LARGEST) {
      throw new WorkbookRefusal(
          Kind.DAMAGED,
          "%s is larger than 100 MB: split it into smaller workbooks or save it as .xlsx."
              .formatted(path.getFileName()));
    }
    XlsFile file = new XlsFile(path, FileFingerprint.of(path), Files.readAllBytes(path), null);
    if (!file.isEncrypted()) {
      return file;
    }
    String password =
        passwords
            .of(path)
            .orElseThrow(() -> new WorkbookRefusal(Kind.PROTECTED, Passwords.missing(path)));
    return new XlsFile(path, file.fingerprint, file.bytes, password);
  }

  /** Why it is only read; empty if it can be written. */
  Optional<String> onlyReadBecause() {
    return password == null ? Optional.empty() : Optional.of(Passwords.missing(path));
  }

  Path path() {
    return path;
  }

  FileFingerprint fingerprint() {
    return fingerprint;
  }

  /** Reads it anew, with every stream beside the workbook's own. */
  HSSFWorkbook open() throws IOException, WorkbookRefusal {
    POIFSFileSystem container = new POIFSFileSystem(new ByteArrayInputStream(bytes));
    Biff8EncryptionKey.setCurrentUserPassword(password);
    try {
      return new HSSFWorkbook(container.getRoot(), container, true);
    } catch (EncryptedDocumentException e) {
      throw Passwords.wrong(path, e);
    } finally {
      Biff8EncryptionKey.setCurrentUserPassword(null);
    }
  }

  /** Writes it with another content for the workbook; every other stream keeps its bytes. */
  void writeWith(byte[] content, OutputStream out) throws IOException {
    try (POIFSFileSystem container = new POIFSFileSystem(new ByteArrayInputStream(bytes))) {
      DirectoryNode root = container.getRoot();
      String name = root.getEntryCaseInsensitive(CONTENT).getName();
      root.createOrUpdateDocument(name, new ByteArrayInputStream(content));
      container.writeFilesystem(out);
    }
  }

  /** Also refuses what is no workbook of this kind. */
  private boolean isEncrypted() throws IOException, WorkbookRefusal {
    try (POIFSFileSystem container = new POIFSFileSystem(new ByteArrayInputStream(bytes))) {
      DirectoryNode root = container.getRoot();
      if (!root.hasEntryCaseInsensitive(CONTENT)) {
        throw refusal(
            Kind.UNSUPPORTED, "holds no workbook of Excel 97-2003: save it as .xlsx and run again");
      }
      try (InputStream stream =
          root.createDocumentInputStream(root.getEntryCaseInsensitive(CONTENT))) {
        byte[] content = stream.readAllBytes();
        requireReadable(content);
        return globalsHold(content, FilePassRecord.sid);
      }
    }
  }

  private void requireReadable(byte[] content) throws WorkbookRefusal {
    if (content.length < 8 || LittleEndian.getUShort(content, 0) != BOFRecord.sid) {
      throw refusal(Kind.DAMAGED, "is damaged at its beginning: take a backup of it");
    }
    if (LittleEndian.getUShort(content, RECORD_HEADER) != BIFF8) {
      throw refusal(
          Kind.UNSUPPORTED,
          "was written by a version before Excel 97: open it in your office, save it as .xlsx and"
              + " run again");
    }
  }

  /** Looks through the records up to the first sheet. */
  private static boolean globalsHold(byte[] content, int sid) {
    int at = 0;
    while (at + RECORD_HEADER <= content.length) {
      int found = LittleEndian.getUShort(content, at);
      if (found == sid) {
        return true;
      }
      int length = LittleEndian.getUShort(content, at + 2);
      if (found == EOFRecord.sid || length > LONGEST_RECORD) {
        return false;
      }
      at += RECORD_HEADER + length;
    }
    return false;
  }

  WorkbookRefusal refusal(Kind kind, String predicate) {
    return new WorkbookRefusal(kind, "%s %s.".formatted(path.getFileName(), predicate));
  }
}
