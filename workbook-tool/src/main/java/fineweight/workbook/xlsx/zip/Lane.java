package fineweight.workbook.xlsx.zip;

import java.io.IOException;
import java.io.InterruptedIOException;

/** A second thread that works on the pieces it is given. */
final class Lane {
  private final PieceQueue queue = new PieceQueue();
  private final Thread thread;
  private volatile IOException failure;

  /** Works on a stream until its end. */
  @FunctionalInterface
  interface Work {
    void on(PieceQueue pieces) throws IOException;
  }

  Lane(String name, Work work) {
    thread = new Thread(() -> run(work), name);
    thread.setDaemon(true);
    thread.start();
  }

  /** After a failure the queue is still emptied, so that the other thread never waits for ever. */
  private void run(Work work) {
    try {
      work.on(queue);
    } catch (IOException e) {
      failure = e;
    } catch (RuntimeException | Error e) {
      failure = new IOException(thread.getName() + " failed", e);
    }
    try {
      queue.drain();
    } catch (InterruptedIOException e) {
      failure = e;
    }
  }

  void put(byte[] piece) throws IOException {
    throwFailure();
    queue.put(piece);
  }

  /** Ends the pieces and waits for the work to be done. */
  void finish() throws IOException {
    queue.end();
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while waiting for another thread");
    }
    throwFailure();
  }

  private void throwFailure() throws IOException {
    if (failure != null) {
      throw failure;
    }
  }
}
