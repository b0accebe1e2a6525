package fineweight.workbook.hostile;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.concurrent.atomic.AtomicInteger;

/** Listens on the loopback and counts who calls. */
final class Listener implements AutoCloseable {
  private final ServerSocket socket;
  private final AtomicInteger calls = new AtomicInteger();

  Listener() throws IOException {
    socket = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    Thread thread = new Thread(this::accept, "loopback listener");
    thread.setDaemon(true);
    thread.start();
  }

  int port() {
    return socket.getLocalPort();
  }

  int connections() {
    return calls.get();
  }

  void await(int wanted) {
    long end = System.nanoTime() + 5_000_000_000L;
    while (calls.get() < wanted && System.nanoTime() < end) {
      Thread.onSpinWait();
    }
  }

  private void accept() {
    while (!socket.isClosed()) {
      try {
        socket.accept().close();
        calls.incrementAndGet();
      } catch (IOException closed) {
        return;
      }
    }
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }
}
