package fineweight.workbook.xlsx.zip;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/**
 * Hands what is written to other threads, each of which gets every byte: packing takes as long as
 * cutting, and reading back longer. What the threads use must not be used elsewhere until {@link
 * #close} has returned, which waits for them.
 */
final class PieceStream extends OutputStream {
  private final List<Lane> lanes;
  private final Consumer<byte[]> witness;
  private byte[] piece = new byte[PieceQueue.PIECE];
  private int filled;
  private boolean closed;

  /**
   * @param witness sees every piece, on the thread that writes
   */
  PieceStream(List<Lane> lanes, Consumer<byte[]> witness) {
    this.lanes = lanes;
    this.witness = witness;
  }

  @Override
  public void write(int b) throws IOException {
    if (filled == piece.length) {
      send();
    }
    piece[filled++] = (byte) b;
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    int from = offset;
    int rest = length;
    while (rest > 0) {
      if (filled == piece.length) {
        send();
      }
      int n = Math.min(rest, piece.length - filled);
      System.arraycopy(bytes, from, piece, filled, n);
      filled += n;
      from += n;
      rest -= n;
    }
  }

  private void send() throws IOException {
    byte[] full = filled == piece.length ? piece : Arrays.copyOf(piece, filled);
    witness.accept(full);
    for (Lane lane : lanes) {
      lane.put(full);
    }
    piece = new byte[PieceQueue.PIECE];
    filled = 0;
  }

  /** Every thread is ended, also after a failure of one of them. */
  @Override
  public void close() throws IOException {
    if (closed) {
      return;
    }
    closed = true;
    IOException failure = null;
    try {
      if (filled > 0) {
        send();
      }
    } catch (IOException e) {
      failure = e;
    }
    for (Lane lane : lanes) {
      try {
        lane.finish();
      } catch (IOException e) {
        failure = failure == null ? e : failure;
      }
    }
    if (failure != null) {
      throw failure;
    }
  }
}
