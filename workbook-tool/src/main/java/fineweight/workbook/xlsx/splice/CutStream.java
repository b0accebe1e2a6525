package fineweight.workbook.xlsx.splice;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Hands bytes to the parser and keeps those since the last cut. */
final class CutStream extends InputStream {
  private final InputStream in;
  private byte[] kept = new byte[1 << 15];
  private int from;
  private int to;

  /** The offset in the part of the first kept byte. */
  private long cut;

  CutStream(InputStream in) {
    this.in = in;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] bytes, int offset, int length) throws IOException {
    int n = in.read(bytes, offset, length);
    if (n > 0) {
      makeRoom(n);
      System.arraycopy(bytes, offset, kept, to, n);
      to += n;
    }
    return n;
  }

  private void makeRoom(int n) {
    if (to + n <= kept.length) {
      return;
    }
    int size = to - from;
    byte[] target = size + n > kept.length / 2 ? new byte[(size + n) * 2] : kept;
    System.arraycopy(kept, from, target, 0, size);
    kept = target;
    from = 0;
    to = size;
  }

  /** Copies up to an offset, which becomes the last cut. */
  void copyTo(long offset, OutputStream out) throws IOException {
    int n = distance(offset);
    out.write(kept, from, n);
    advance(n);
  }

  /** Leaves out up to an offset, which becomes the last cut. */
  void dropTo(long offset) {
    advance(distance(offset));
  }

  private void advance(int n) {
    from += n;
    cut += n;
  }

  /** The kept text between two offsets. */
  String text(long start, long end) {
    int first = from + distance(start);
    return new String(kept, first, (int) (end - start), StandardCharsets.UTF_8);
  }

  /** Whether a tag begins there; else the parser's offsets are not to be trusted. */
  boolean tagBeginsAt(long offset) {
    int place = from + distance(offset);
    return place < to && kept[place] == '<' || place == to;
  }

  /** How many bytes are kept before a place; negative if it is cut already. */
  long gathered(long offset) {
    return offset - cut;
  }

  private int distance(long offset) {
    long distance = offset - cut;
    if (distance < 0 || distance > to - from) {
      throw new IllegalStateException("cut at " + offset + " lies outside of what is kept");
    }
    return (int) distance;
  }

  /** Copies everything that was read and not cut yet; the parser has read to the end. */
  void copyRest(OutputStream out) throws IOException {
    out.write(kept, from, to - from);
    advance(to - from);
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
