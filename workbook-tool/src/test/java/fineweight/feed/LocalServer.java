package fineweight.feed;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/** A server on the loopback that answers as a test wants it to. */
final class LocalServer implements AutoCloseable {
  private final HttpServer server;
  private final ExecutorService threads = Executors.newCachedThreadPool();
  private final AtomicInteger calls = new AtomicInteger();

  /** Answers one call. */
  interface Answer {
    void to(HttpExchange exchange, int call) throws IOException, InterruptedException;
  }

  LocalServer(Answer answer) throws IOException {
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.setExecutor(threads);
    server.createContext(
        "/",
        exchange -> {
          try (exchange) {
            answer.to(exchange, calls.incrementAndGet());
          } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
          }
        });
    server.start();
  }

  /** Always the same body. */
  static LocalServer saying(String json) throws IOException {
    return new LocalServer((exchange, call) -> send(exchange, 200, "application/json", json));
  }

  static void send(HttpExchange exchange, int status, String type, String body) throws IOException {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    exchange.getResponseHeaders().set("Content-Type", type);
    exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
    exchange.getResponseBody().write(bytes);
  }

  String address() {
    return "http://127.0.0.1:" + server.getAddress().getPort() + "/prices.json";
  }

  int calls() {
    return calls.get();
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }
}
