package fineweight.workbook.save;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What tells whether a file is still the one that was read.
 *
 * @param size in bytes
 * @param sha256 of the whole content, in lower-case hexadecimal digits
 */
public record FileFingerprint(long size, FileTime modified, String sha256) {
  public static FileFingerprint of(Path file) throws IOException {
    FileTime modified = Files.getLastModifiedTime(file);
    MessageDigest digest = sha256Digest();
    long size = 0;
    try (InputStream in = Files.newInputStream(file)) {
      byte[] piece = new byte[1 << 16];
      for (int n = in.read(piece); n >= 0; n = in.read(piece)) {
        digest.update(piece, 0, n);
        size += n;
      }
    }
    return new FileFingerprint(size, modified, HexFormat.of().formatHex(digest.digest()));
  }

  private static MessageDigest sha256Digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
