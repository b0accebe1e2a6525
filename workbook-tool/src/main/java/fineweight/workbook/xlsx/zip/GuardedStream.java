package fineweight.workbook.xlsx.zip;

import fineweight.workbook.xlsx.xml.DamageException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.CRC32;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;

/**
 * An entry's content while it is inflated: never longer than said, its checksum right at the end,
 * and for XML no piece between two angle brackets longer than any workbook has.
 */
final class GuardedStream extends FilterInputStream {
  /** A cell's text has 32,767 characters at most; a data table in base64 may be longer. */
  private static final int LONGEST_PIECE = 8 << 20;

  private final ZipArchiveEntry entry;
  private final boolean xml;
  private final CRC32 checksum = new CRC32();
  private long count;
  private long piece;
  private boolean ended;

  GuardedStream(InputStream in, ZipArchiveEntry entry, boolean xml) {
    super(in);
    this.entry = entry;
    this.xml = xml;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] bytes, int offset, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    int n = in.read(bytes, offset, length);
    if (n < 0) {
      checkEnd();
      return n;
    }
    checksum.update(bytes, offset, n);
    count += n;
    if (count > entry.getSize()) {
      throw new DamageException("part " + entry.getName() + " is longer than it says");
    }
    if (xml) {
      checkPieces(bytes, offset, n);
    }
    return n;
  }

  private void checkPieces(byte[] bytes, int offset, int n) {
    for (int i = offset + n - 1; i >= offset; i--) {
      if (bytes[i] == '<') {
        piece = offset + n - i;
        return;
      }
    }
    piece += n;
    if (piece > LONGEST_PIECE) {
      throw new DamageException(
          "part " + entry.getName() + " holds a piece longer than any cell may be");
    }
  }

  private void checkEnd() {
    if (ended) {
      return;
    }
    ended = true;
    if (count != entry.getSize()) {
      throw new DamageException("part " + entry.getName() + " is cut off");
    }
    if (checksum.getValue() != entry.getCrc()) {
      throw new DamageException("the checksum of part " + entry.getName() + " is wrong");
    }
  }

  @Override
  public long skip(long n) throws IOException {
    return readNBytes((int) Math.min(n, 8192)).length;
  }

  @Override
  public boolean markSupported() {
    return false;
  }

  /** Reads the rest, so that the checksum is checked. */
  void drain() throws IOException {
    byte[] waste = new byte[1 << 14];
    while (read(waste, 0, waste.length) >= 0) {
      continue;
    }
  }
}
