package fineweight.workbook.xlsx.zip;

import java.io.InputStream;
import java.io.InterruptedIOException;
import java.util.ArrayDeque;

/**
 * Pieces of bytes on their way from one thread to another, which reads them as a stream. Memory is
 * bounded: whoever puts waits for whoever takes, who therefore must {@link #drain} in the end.
 *
 * <p>The queues of java.util.concurrent would do; but they are not needed anywhere else at the
 * start of a run, and to load what they rest on takes longer than a small file.
 */
final class PieceQueue extends InputStream {
  static final int PIECE = 1 << 16;
  private static final int WAITING = 8;
  private static final byte[] END = new byte[0];

  private final ArrayDeque<byte[]> queue = new ArrayDeque<>(WAITING);
  private byte[] piece = END;
  private int at;
  private boolean ended;

  /** The piece may not be changed any more. */
  synchronized void put(byte[] bytes) throws InterruptedIOException {
    while (queue.size() == WAITING) {
      await();
    }
    queue.add(bytes);
    notifyAll();
  }

  /** Nothing more is put. */
  void end() throws InterruptedIOException {
    put(END);
  }

  /** The next piece; null at the end. */
  synchronized byte[] take() throws InterruptedIOException {
    if (ended) {
      return null;
    }
    while (queue.isEmpty()) {
      await();
    }
    byte[] next = queue.remove();
    notifyAll();
    ended = next == END;
    return ended ? null : next;
  }

  private void await() throws InterruptedIOException {
    try {
      wait();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while waiting for another thread");
    }
  }

  /** Takes what is left, so that nobody waits for ever. */
  void drain() throws InterruptedIOException {
    while (take() != null) {
      continue;
    }
  }

  private boolean hasBytes() throws InterruptedIOException {
    while (at == piece.length) {
      byte[] next = take();
      if (next == null) {
        return false;
      }
      piece = next;
      at = 0;
    }
    return true;
  }

  @Override
  public int read() throws InterruptedIOException {
    return hasBytes() ? piece[at++] & 0xFF : -1;
  }

  @Override
  public int read(byte[] bytes, int offset, int length) throws InterruptedIOException {
    if (length == 0) {
      return 0;
    }
    if (!hasBytes()) {
      return -1;
    }
    int n = Math.min(length, piece.length - at);
    System.arraycopy(piece, at, bytes, offset, n);
    at += n;
    return n;
  }
}
