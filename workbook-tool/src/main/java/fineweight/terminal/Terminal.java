package fineweight.terminal;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;

/** Asks what the terminal is. The answers cost a small process, so ask only when they count. */
public final class Terminal {
  /** Narrower than this, nothing can be laid out. */
  static final int NARROWEST = 20;

  private static final int USUAL_WIDTH = 80;
  private static final int LONGEST_WAIT_SECONDS = 2;

  private Terminal() {}

  /** A stream that a process begins with; its place is its number. */
  public enum Stream {
    IN,
    OUT,
    ERR
  }

  /**
   * Whether the stream ends at a terminal that can move back to the start of a line. Where the
   * system has no {@code test} to ask, the answer is no.
   */
  public static boolean isTerminal(Stream stream) {
    if ("dumb".equals(System.getenv("TERM"))) {
      return false;
    }
    ProcessBuilder test =
        new ProcessBuilder("test", "-t", Integer.toString(stream.ordinal())).inheritIO();
    return run(test).isPresent();
  }

  /** Characters in a line: COLUMNS if it is set, else what the terminal says, else 80. */
  public static int width() {
    return widthSaid(System.getenv()).orElseGet(Terminal::widthAsked);
  }

  /** The width that the environment names, if any. */
  public static OptionalInt widthSaid(Map<String, String> environment) {
    String columns = environment.getOrDefault("COLUMNS", "");
    return columns.matches("[0-9]{1,5}") && Integer.parseInt(columns) >= NARROWEST
        ? OptionalInt.of(Integer.parseInt(columns))
        : OptionalInt.empty();
  }

  private static int widthAsked() {
    ProcessBuilder stty = new ProcessBuilder("stty", "size").redirectInput(new File("/dev/tty"));
    return run(stty)
        .filter(size -> size.matches("[0-9]{1,5} [0-9]{1,5}"))
        .map(size -> Integer.valueOf(size.substring(size.indexOf(' ') + 1)))
        .filter(width -> width >= NARROWEST)
        .orElse(USUAL_WIDTH);
  }

  /** What the process printed, if it ended well and soon. */
  private static Optional<String> run(ProcessBuilder builder) {
    try {
      Process process = builder.start();
      if (!process.waitFor(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        return Optional.empty();
      }
      try (InputStream out = process.getInputStream()) {
        return process.exitValue() == 0
            ? Optional.of(new String(out.readAllBytes(), StandardCharsets.US_ASCII).strip())
            : Optional.empty();
      }
    } catch (IOException noSuchProgram) {
      return Optional.empty();
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  /** The letters that the user's terminal knows, by the settings of the system. */
  public static Charset letters() {
    for (String property :
        new String[] {"stdout.encoding", "sun.stdout.encoding", "native.encoding"}) {
      String name = System.getProperty(property, "");
      try {
        if (!name.isEmpty()) {
          return Charset.forName(name);
        }
      } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
        // The next property may know better.
      }
    }
    return StandardCharsets.UTF_8;
  }
}
