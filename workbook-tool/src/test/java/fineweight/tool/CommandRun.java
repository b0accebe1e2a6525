package fineweight.tool;

import fineweight.terminal.Screen;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What one call of the real command said and how it ended.
 *
 * @param code the exit code
 * @param out what it printed
 * @param err its complaints
 */
public record CommandRun(int code, String out, String err) {
  /** The day on which all tests take place. */
  public static final Clock DAY =
      Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

  /** Round figures, at which the key tables of the corpus were worked out. */
  private static final List<String> KEY_PRICES =
      List.of("--spot", "XAU=2500", "--spot", "XAG=30", "--spot", "XPT=1000");

  public static CommandRun of(Object... words) {
    return typing("", words);
  }

  /**
   * @param typed what comes in as if typed
   */
  public static CommandRun typing(String typed, Object... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Surroundings real = Surroundings.real(new PrintWriter(out), new PrintWriter(err), Screen.NONE);
    int code =
        Main.run(
            Stream.of(words).map(Object::toString).toArray(String[]::new),
            new Surroundings(
                real.out(),
                real.err(),
                DAY,
                real.workbooks(),
                new BufferedReader(new StringReader(typed)),
                Screen.NONE));
    real.out().flush();
    real.err().flush();
    return new CommandRun(code, out.toString(), err.toString());
  }

  /** {@code refresh} at gold 2500, silver 30, platinum 1000 USD. */
  public static CommandRun refresh(Path file, String... more) {
    List<Object> words = new ArrayList<>(List.of("refresh", file));
    words.addAll(KEY_PRICES);
    words.addAll(List.of(more));
    return of(words.toArray());
  }

  public boolean done() {
    return code == 0;
  }

  /** The complaint without the line that points to the help. */
  public String complaint() {
    return err.lines().filter(line -> !line.startsWith("See: ")).reduce("", String::concat);
  }

  /** Everything that was printed. */
  public String all() {
    return out + err;
  }

  /** A copy under the same name in a folder of its own, so that backups do not mix. */
  public static Path copy(Path file, Path folder) throws IOException {
    Path place = Files.createDirectories(folder).resolve(file.getFileName().toString());
    return Files.write(place, Files.readAllBytes(file));
  }
}
