package fineweight.workbook.xlsx.zip;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;

/**
 * Hands what is written to a second thread, which writes it on: packing takes twice as long as
 * cutting. Memory is bounded by the queue. The target must not be used elsewhere until {@link
 * #close} has returned, which waits for the thread and does not close the target.
 */
final class BackgroundStream extends OutputStream {
  private static final int PIECE = 1 << 16;
  private static final byte[] END = new byte[0];

  private final BlockingQueue<byte[]> queue = new ArrayBlockingQueue<>(8);
  private final OutputStream target;
  private final Thread writer;
  private volatile IOException failure;
  private byte[] piece = new byte[PIECE];
  private int filled;
  private boolean closed;

  BackgroundStream(OutputStream target) {
    this.target = target;
    writer = new Thread(this::writeOn, "pack");
    writer.setDaemon(true);
    writer.start();
  }

  private void writeOn() {
    try {
      for (byte[] next = queue.take(); next != END; next = queue.take()) {
        if (failure == null) {
          writeOne(next);
        }
      }
    } catch (InterruptedException e) {
      failure = new InterruptedIOException("interrupted while packing");
    }
  }

  /** After a failure the queue is still emptied, so that the other thread never waits for ever. */
  private void writeOne(byte[] next) {
    try {
      target.write(next);
    } catch (IOException e) {
      failure = e;
    } catch (RuntimeException | Error e) {
      failure = new IOException("packing failed", e);
    }
  }

  @Override
  public void write(int b) throws IOException {
    if (filled == PIECE) {
      send();
    }
    piece[filled++] = (byte) b;
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    int from = offset;
    int rest = length;
    while (rest > 0) {
      if (filled == PIECE) {
        send();
      }
      int n = Math.min(rest, PIECE - filled);
      System.arraycopy(bytes, from, piece, filled, n);
      filled += n;
      from += n;
      rest -= n;
    }
  }

  private void send() throws IOException {
    if (failure != null) {
      throw failure;
    }
    put(filled == PIECE ? piece : Arrays.copyOf(piece, filled));
    piece = new byte[PIECE];
    filled = 0;
  }

  private void put(byte[] bytes) throws IOException {
    try {
      queue.put(bytes);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while packing");
    }
  }

  @Override
  public void close() throws IOException {
    if (closed) {
      return;
    }
    closed = true;
    try {
      if (filled > 0) {
        put(Arrays.copyOf(piece, filled));
      }
      put(END);
      writer.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while packing");
    }
    if (failure != null) {
      throw failure;
    }
  }
}
