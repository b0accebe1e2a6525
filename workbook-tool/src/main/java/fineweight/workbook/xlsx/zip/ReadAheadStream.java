package fineweight.workbook.xlsx.zip;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.util.Arrays;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;

/**
 * Reads from another stream on a second thread while what was read before is looked at: unpacking
 * takes a third as long as parsing. Memory is bounded by the queue. The other stream must not be
 * used elsewhere until {@link #close} has returned, which closes it.
 */
final class ReadAheadStream extends InputStream {
  private static final int PIECE = 1 << 16;
  private static final byte[] END = new byte[0];

  private final BlockingQueue<byte[]> queue = new ArrayBlockingQueue<>(8);
  private final InputStream source;
  private final Thread reader;
  private volatile Throwable failure;
  private volatile boolean closed;
  private byte[] piece = END;
  private int at;
  private boolean ended;

  ReadAheadStream(InputStream source) {
    this.source = source;
    reader = new Thread(this::readOn, "unpack");
    reader.setDaemon(true);
    reader.start();
  }

  private void readOn() {
    try {
      try {
        byte[] buffer = new byte[PIECE];
        for (int n = source.read(buffer, 0, PIECE);
            n >= 0 && !closed;
            n = source.read(buffer, 0, PIECE)) {
          queue.put(Arrays.copyOf(buffer, n));
        }
      } catch (IOException | RuntimeException | Error e) {
        failure = e;
      }
      queue.put(END);
    } catch (InterruptedException e) {
      // Only close interrupts, and nobody reads any more.
      failure = e;
    }
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
    while (at == piece.length) {
      if (ended) {
        return -1;
      }
      next();
    }
    int n = Math.min(length, piece.length - at);
    System.arraycopy(piece, at, bytes, offset, n);
    at += n;
    return n;
  }

  private void next() throws IOException {
    try {
      piece = queue.take();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while reading");
    }
    at = 0;
    ended = piece == END;
    if (ended && failure != null) {
      throwFailure();
    }
  }

  private void throwFailure() throws IOException {
    if (failure instanceof IOException e) {
      throw e;
    }
    if (failure instanceof Error e) {
      throw e;
    }
    throw (RuntimeException) failure;
  }

  @Override
  public void close() throws IOException {
    closed = true;
    reader.interrupt();
    try {
      reader.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while reading");
    }
    source.close();
  }
}
