package fineweight.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The line of progress at real terminals and where there is none. */
class ProgressLineTest {
  private static final Map<String, String> UTF_8 = Map.of("LC_ALL", "C.UTF-8");
  private static final String LONG = "3400";

  @TempDir Path folder;

  @BeforeEach
  void aTerminalCanBeMade() {
    assumeTrue(PseudoTerminal.isThere(), "script of util-linux makes the terminal");
  }

  private PseudoTerminal.Seen show(Map<String, String> environment, String millis)
      throws IOException, InterruptedException {
    return PseudoTerminal.show(folder, environment, SlowWork.class.getName(), millis);
  }

  private static List<String> progress(PseudoTerminal.Seen seen) {
    return Pattern.compile("[\\r\\n]+")
        .splitAsStream(seen.out())
        .filter(line -> line.startsWith("Reading"))
        .toList();
  }

  @Test
  void longWorkTellsRowsRateAndTimeLeft() throws Exception {
    PseudoTerminal.Seen seen = show(UTF_8, LONG);
    assertThat(progress(seen)).hasSizeGreaterThan(2);
    assertThat(progress(seen).get(1))
        .matches("Reading +\\d+% .*/9999 rows \\(0:00:0\\d / 0:00:0\\d left\\) .*rows/s ?");
    assertThat(seen.out()).contains("|").doesNotContain("\u001b");
  }

  @Test
  void theLineIsGoneWhenTheWorkIsDone() throws Exception {
    PseudoTerminal.Seen seen = show(UTF_8, LONG);
    String after = seen.out().substring(seen.out().lastIndexOf("Reading"));
    assertThat(after.substring(after.indexOf('\r'))).matches("(?s)\\r+ {40,}\\r+done\\R.*");
  }

  @Test
  void shortWorkTellsNothing() throws Exception {
    assertThat(show(UTF_8, "300").out()).isEqualToIgnoringNewLines("doneno complaint");
  }

  @Test
  void aTerminalWithoutUnicodeIsShownPlainLetters() throws Exception {
    PseudoTerminal.Seen seen = show(Map.of("LC_ALL", "C"), LONG);
    assertThat(progress(seen)).isNotEmpty();
    assertThat(seen.out().chars()).allMatch(letter -> letter < 127);
  }

  @Test
  void noLineIsLongerThanTheTerminalIsWide() throws Exception {
    PseudoTerminal.Seen seen = show(Map.of("LC_ALL", "C", "COLUMNS", "50"), LONG);
    assertThat(progress(seen)).isNotEmpty().allMatch(line -> line.length() < 50);
  }

  @Test
  void aTerminalThatCannotGoBackIsToldNothing() throws Exception {
    assertThat(show(Map.of("TERM", "dumb"), LONG).out()).doesNotContain("Reading");
  }

  @Test
  void aPipeIsToldNothing() throws Exception {
    PseudoTerminal.Seen seen = PseudoTerminal.pipe(folder, UTF_8, SlowWork.class.getName(), LONG);
    assertThat(seen.out()).isEqualToIgnoringNewLines("done");
    assertThat(seen.err()).isEqualToIgnoringNewLines("no complaint");
  }
}
