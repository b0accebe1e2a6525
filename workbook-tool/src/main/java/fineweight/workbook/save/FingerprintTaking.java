package fineweight.workbook.save;

import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;

/** A fingerprint on its way, taken on a second thread. */
public final class FingerprintTaking {
  private final Path file;
  private final FileTime modified;
  private final Thread thread = new Thread(this::take, "fingerprint");

  /** Written by the second thread, read after it has ended. */
  private FileFingerprint taken;

  private IOException failure;

  FingerprintTaking(Path file) throws IOException {
    this.file = file;
    modified = Files.getLastModifiedTime(file);
    thread.setDaemon(true);
    thread.start();
  }

  private void take() {
    try (InputStream content = Files.newInputStream(file)) {
      taken = FileFingerprint.copying(content, OutputStream.nullOutputStream(), modified);
    } catch (IOException e) {
      failure = e;
    }
  }

  /**
   * Waits for it.
   *
   * @throws WorkbookRefusal if the file has changed since: then nobody knows of which state the
   *     content is that was taken meanwhile
   */
  public FileFingerprint get() throws IOException, WorkbookRefusal {
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while reading the file");
    }
    if (failure != null) {
      throw failure;
    }
    boolean same =
        Files.getLastModifiedTime(file).equals(modified) && Files.size(file) == taken.size();
    if (!same) {
      throw SafeSave.changed(file);
    }
    return taken;
  }
}
