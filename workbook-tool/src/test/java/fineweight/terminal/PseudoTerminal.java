package fineweight.terminal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/** Runs a program of ours in a process whose streams end at a terminal, or at files. */
public final class PseudoTerminal {
  private PseudoTerminal() {}

  /**
   * What came of it.
   *
   * @param out what the terminal showed, or standard output
   * @param err standard error; empty at a terminal, where both come together
   */
  public record Seen(int code, String out, String err) {}

  /** Whether {@code script} of util-linux is there to make a terminal. */
  public static boolean isThere() {
    return Files.isExecutable(Path.of("/usr/bin/script"))
        && System.getProperty("os.name").equals("Linux");
  }

  /** At a terminal. */
  public static Seen show(Path folder, Map<String, String> environment, String... words)
      throws IOException, InterruptedException {
    String line =
        java(words).stream()
            .map(word -> "'" + word.replace("'", "'\\''") + "'")
            .collect(Collectors.joining(" "));
    return run(
        folder, environment, List.of("/usr/bin/script", "-q", "-e", "-c", line, "/dev/null"));
  }

  /** With both streams going to files. */
  public static Seen pipe(Path folder, Map<String, String> environment, String... words)
      throws IOException, InterruptedException {
    return run(folder, environment, java(words));
  }

  private static List<String> java(String... words) {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path"))));
    command.addAll(List.of(words));
    return command;
  }

  private static Seen run(Path folder, Map<String, String> environment, List<String> command)
      throws IOException, InterruptedException {
    Path out = Files.createTempFile(folder, "out", ".txt");
    Path err = Files.createTempFile(folder, "err", ".txt");
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectInput(Path.of("/dev/null").toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    builder.environment().remove("COLUMNS");
    builder.environment().put("TERM", "xterm");
    builder.environment().putAll(environment);
    Process process = builder.start();
    if (!process.waitFor(3, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new IOException("still running after three minutes: " + command);
    }
    return new Seen(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }
}
