package fineweight.workbook.xlsx.sheet;

import java.io.IOException;
import java.io.InputStream;
import org.apache.commons.io.output.UnsynchronizedByteArrayOutputStream;

/** Gives a parser what stands before the rows and, when the rows are done with, what follows. */
final class GapStream extends InputStream {
  private final InputStream in;
  private final UnsynchronizedByteArrayOutputStream before =
      UnsynchronizedByteArrayOutputStream.builder().get();
  private final long gap;
  private boolean passed;

  /**
   * @param gap where the rows begin
   */
  GapStream(InputStream in, long gap) {
    this.in = in;
    this.gap = gap;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] bytes, int offset, int length) throws IOException {
    if (passed) {
      return in.read(bytes, offset, length);
    }
    int most = (int) Math.min(length, gap - before.size());
    if (most == 0) {
      throw new IllegalStateException("the parser reads on before the rows are read");
    }
    int n = in.read(bytes, offset, most);
    if (n > 0) {
      before.write(bytes, offset, n);
    }
    return n;
  }

  /** What stands before the rows. */
  byte[] before() {
    return before.toByteArray();
  }

  /** The rows were read by somebody else. */
  void pass() {
    passed = true;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
