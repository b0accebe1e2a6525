package fineweight.workbook.save;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a file was like at a moment, to notice a change. Immutable.
 *
 * @param size in bytes
 * @param sha256 of the content, in small hexadecimal digits
 */
public record FileFingerprint(long size, FileTime modified, String sha256) {
  /** Reads the whole file. */
  public static FileFingerprint of(Path file) throws IOException {
    // The time first: a change during the reading then shows as a later one.
    FileTime modified = Files.getLastModifiedTime(file);
    try (InputStream content = Files.newInputStream(file)) {
      return copying(content, OutputStream.nullOutputStream(), modified);
    }
  }

  /** Reads the whole file on a second thread, while its content is taken on this one. */
  public static FingerprintTaking taking(Path file) throws IOException {
    return new FingerprintTaking(file);
  }

  /** Copies a content and tells what was copied. */
  static FileFingerprint copying(InputStream from, OutputStream to, FileTime modified)
      throws IOException {
    MessageDigest digest = sha256Digest();
    long size = new DigestInputStream(from, digest).transferTo(to);
    return new FileFingerprint(size, modified, HexFormat.of().formatHex(digest.digest()));
  }

  /** Whether the content is the same, whatever the time stamp says. */
  public boolean sameContent(FileFingerprint other) {
    return size == other.size && sha256.equals(other.sha256);
  }

  private static MessageDigest sha256Digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
