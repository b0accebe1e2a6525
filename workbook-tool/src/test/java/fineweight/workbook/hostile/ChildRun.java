package fineweight.workbook.hostile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * One file in a process of its own.
 *
 * @param output standard output and error together
 * @param unchanged whether the file is byte for byte what it was
 * @param connections how often the loopback listener, the child's only proxy, was called
 */
record ChildRun(int code, String output, long cpuMillis, boolean unchanged, int connections) {
  static ChildRun of(Path file) throws IOException, InterruptedException {
    byte[] before = Files.readAllBytes(file);
    Path output = Files.createTempFile("child", ".txt");
    try (Listener listener = new Listener()) {
      Process child = start(file, output, listener.port());
      if (!child.waitFor(20, TimeUnit.SECONDS)) {
        child.destroyForcibly();
        return new ChildRun(-1, "hung: " + Files.readString(output), 20_000, true, 0);
      }
      String text = Files.readString(output, StandardCharsets.UTF_8);
      boolean unchanged = Arrays.equals(before, Files.readAllBytes(file));
      return new ChildRun(
          child.exitValue(), text, cpuMillis(text), unchanged, listener.connections());
    } finally {
      Files.delete(output);
    }
  }

  /** Everything the child would load over a network goes to the listener instead. */
  private static Process start(Path file, Path output, int port) throws IOException {
    String classes =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx512m",
            "-Dstdout.encoding=UTF-8",
            "-Dhttp.proxyHost=127.0.0.1",
            "-Dhttp.proxyPort=" + port,
            "-Dhttps.proxyHost=127.0.0.1",
            "-Dhttps.proxyPort=" + port,
            "-Dhttp.nonProxyHosts=",
            "-cp",
            classes,
            HostileTrial.class.getName(),
            file.toString());
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(output.toFile())
        .start();
  }

  private static long cpuMillis(String output) {
    return output
        .lines()
        .filter(each -> each.startsWith("time "))
        .mapToLong(each -> Long.parseLong(each.split(" ")[2]))
        .findFirst()
        .orElse(0);
  }

  /** The line before the time. */
  String lastLine() {
    List<String> lines = output.lines().filter(each -> !each.startsWith("time ")).toList();
    return lines.isEmpty() ? "" : lines.get(lines.size() - 1);
  }
}
