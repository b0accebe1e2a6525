package fineweight.workbook.xlsx.zip;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.util.Arrays;

/**
 * Reads a stream ahead on a second thread, so that unpacking goes on while what was unpacked is
 * parsed. A failure shows when the bytes before it are used up.
 */
final class AheadStream extends InputStream {
  private final InputStream source;
  private final PieceQueue queue = new PieceQueue();
  private final Thread thread = new Thread(this::readOn, "unpack");
  private volatile boolean closed;

  /** Written before the end of the queue is put, read after it was taken. */
  private Throwable failure;

  AheadStream(InputStream source) {
    this.source = source;
    thread.setDaemon(true);
    thread.start();
  }

  private void readOn() {
    try {
      try {
        boolean more = true;
        while (more && !closed) {
          more = readPiece();
        }
      } catch (IOException | RuntimeException | Error e) {
        failure = e;
      }
      queue.end();
    } catch (InterruptedIOException e) {
      // Nobody interrupts this thread but to end the program.
      return;
    }
  }

  /** Bytes before a failure are handed on before it is. */
  private boolean readPiece() throws IOException {
    byte[] piece = new byte[PieceQueue.PIECE];
    int filled = 0;
    int n = 0;
    try {
      while (n >= 0 && filled < piece.length) {
        filled += n;
        n = source.read(piece, filled, piece.length - filled);
      }
    } finally {
      if (filled > 0) {
        queue.put(filled == piece.length ? piece : Arrays.copyOf(piece, filled));
      }
    }
    return n >= 0;
  }

  @Override
  public int read() throws IOException {
    int b = queue.read();
    if (b < 0) {
      throwFailure();
    }
    return b;
  }

  @Override
  public int read(byte[] bytes, int offset, int length) throws IOException {
    int n = queue.read(bytes, offset, length);
    if (n < 0) {
      throwFailure();
    }
    return n;
  }

  private void throwFailure() throws IOException {
    if (failure instanceof IOException e) {
      throw e;
    }
    if (failure instanceof RuntimeException e) {
      throw e;
    }
    if (failure instanceof Error e) {
      throw e;
    }
  }

  /** Ends the thread before the source is closed. */
  @Override
  public void close() throws IOException {
    closed = true;
    queue.drain();
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while waiting for another thread");
    }
    source.close();
  }
}
