package fineweight.window;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** A screen in memory: an X server of its own, ended with the test. */
final class VirtualDisplay implements AutoCloseable {
  private final Process server;
  private final String name;

  private VirtualDisplay(Process server, String name) {
    this.server = server;
    this.name = name;
  }

  /** The calling test is skipped where this cannot be, or fails where it must be. */
  static VirtualDisplay start() throws IOException {
    boolean there =
        Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
                .anyMatch(each -> Files.isExecutable(Path.of(each, "Xvfb")))
            && Files.exists(Path.of(System.getProperty("java.home"), "lib", "libawt_xawt.so"));
    String absent = "no Xvfb, or a Java without windows, on this machine";
    if (!there && Boolean.getBoolean("fineweight.must.display")) {
      throw new AssertionError(absent);
    }
    Assumptions.assumeTrue(there, absent);
    Process server =
        new ProcessBuilder(
                "Xvfb", "-displayfd", "1", "-screen", "0", "1280x1000x24", "-nolisten", "tcp")
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String number =
        new BufferedReader(
                new InputStreamReader(server.getInputStream(), StandardCharsets.US_ASCII))
            .readLine();
    if (number == null) {
      throw new AssertionError("Xvfb did not start");
    }
    return new VirtualDisplay(server, ":" + number.strip());
  }

  /** For the variable DISPLAY. */
  String name() {
    return name;
  }

  @Override
  public void close() {
    server.destroy();
    try {
      if (!server.waitFor(10, TimeUnit.SECONDS)) {
        server.destroyForcibly();
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
