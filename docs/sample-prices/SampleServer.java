import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;

/** Serves invented prices on this machine, to try the settings with: java SampleServer.java [PORT] */
public class SampleServer {
  private static final String PRICES =
      """
      {"day": "2026-11-25", "note": "invented", "metals": {
        "silver": {"per troy ounce": 30.00}, "gold": {"per gram": "80.40"}, "copper": {"per tonne": 9500}}}
      """;

  public static void main(String[] arguments) throws IOException {
    int port = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 8017;
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
    server.createContext(
        "/prices.json",
        exchange -> {
          byte[] body = PRICES.getBytes(StandardCharsets.UTF_8);
          exchange.getResponseHeaders().set("Content-Type", "application/json");
          exchange.sendResponseHeaders(200, body.length);
          exchange.getResponseBody().write(body);
          exchange.close();
        });
    server.start();
    System.out.println("http://127.0.0.1:" + server.getAddress().getPort() + "/prices.json");
  }
}
