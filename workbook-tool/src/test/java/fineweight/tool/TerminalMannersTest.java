package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import fineweight.terminal.PseudoTerminal;
import fineweight.terminal.PseudoTerminal.Seen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real command in a process of its own, at a terminal and on a pipe. */
class TerminalMannersTest {
  private static final String MAIN = "fineweight.tool.Main";
  private static final String ESCAPE = "\u001B";
  private static final Map<String, String> UTF_8 = Map.of("LC_ALL", "C.UTF-8");
  private static final Map<String, String> ASCII = Map.of("LC_ALL", "C");

  @TempDir Path folder;

  @Test
  void onlyATerminalGetsEscapeCodes() throws Exception {
    assertThat(pipe(UTF_8, "--help").out()).contains("Usage: fineweight").doesNotContain(ESCAPE);
    assertThat(pipe(UTF_8, "refresh", "--help").out()).doesNotContain(ESCAPE);
    assumeTrue(PseudoTerminal.isThere());
    assertThat(show(Map.of(), "--help").out()).contains(ESCAPE + "[1m");
  }

  @Test
  void whoWantsNoColourGetsNone() throws Exception {
    assumeTrue(PseudoTerminal.isThere());
    assertThat(show(Map.of("NO_COLOR", "1"), "--help").out())
        .contains("Usage: fineweight")
        .doesNotContain(ESCAPE);
    assertThat(show(Map.of("TERM", "dumb"), "help", "refresh").out()).doesNotContain(ESCAPE);
    // An empty NO_COLOR says nothing: no-color.org.
    assertThat(show(Map.of("NO_COLOR", ""), "--help").out()).contains(ESCAPE);
  }

  @Test
  void aTerminalWithoutOurSignsGetsPlainOnes() throws Exception {
    Path list = list();
    String signs = pipe(UTF_8, list.toString()).out();
    assertThat(signs).contains("1 \u25CF valued", "1 \u25CB not known", "M\u00FCnze");
    String plain = pipe(ASCII, list.toString()).out();
    assertThat(plain).contains("1 * valued", "1 ! not known", "Munze").matches("\\p{ASCII}*");
    Seen complaint = pipe(ASCII, "explain", "1964 quarter", "--home=\u2030");
    assertThat(complaint.out() + complaint.err()).matches("\\p{ASCII}*");
  }

  @Test
  void theResultForAnotherProgramIsTheSameInEveryLocale() throws Exception {
    String list = list().toString();
    String[] words = {"refresh", "--dry-run", list, "--spot=XAG=30", "--result=-"};
    String utf8 = pipe(UTF_8, words).out();
    assertThat(pipe(ASCII, words).out()).isEqualTo(utf8);
    assertThat(new ObjectMapper().readTree(utf8).at("/files/0/states").toString())
        .contains("\u25CF");
  }

  @Test
  void nothingRunsOverTheEdgeOfATerminal() throws Exception {
    assumeTrue(PseudoTerminal.isThere());
    list();
    for (String width : List.of("60", "80")) {
      Map<String, String> narrow = Map.of("COLUMNS", width, "NO_COLOR", "1", "LC_ALL", "C.UTF-8");
      for (String words :
          List.of(
              "",
              "--help",
              "help refresh",
              "explain 1964-D quarter --spot XAG=30.00",
              "list.csv --spot XAG=30.00",
              "bid list.csv --spot XAG=30.00",
              "weigh 1,240 g mixed 90 % --face 49.60 --spot XAG=30.00")) {
        Seen seen = show(narrow, words.isEmpty() ? new String[0] : words.split(" "));
        assertThat(seen.code()).as(words + seen.out()).isZero();
        assertThat(seen.out().lines())
            .as(words)
            .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(Integer.parseInt(width)));
      }
    }
  }

  @Test
  void theTableOfManyFilesFitsEightyColumns() throws Exception {
    for (String name : List.of("a", "b-with-a-name-that-is-far-too-long-for-one-line-of-a-table")) {
      Files.copy(list(), folder.resolve(name + ".csv"));
    }
    Seen seen = pipe(UTF_8, "refresh", "--dry-run", "--no-cells", ".", "--spot=XAG=30");
    List<String> table = seen.out().lines().takeWhile(line -> !line.isBlank()).toList();
    assertThat(table).as(seen.err()).hasSizeGreaterThanOrEqualTo(4);
    assertThat(table).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void aWrongWordIsNamedWithTheWayOn() throws Exception {
    Seen wrong = pipe(UTF_8, "refesh", "coins.xlsx");
    assertThat(wrong.code()).isEqualTo(2);
    assertThat(wrong.err())
        .contains("There is no command or file refesh.", "fineweight refresh")
        .contains("See: fineweight --help")
        .doesNotContain(ESCAPE);
    Seen option = pipe(UTF_8, "refresh", "coins.xlsx", "--spt", "XAG=30");
    assertThat(option.err()).contains("'--spt'", "--spot", "See: fineweight refresh --help");
  }

  @Test
  void everyHelpLeadsToTheExitCodes() throws Exception {
    String help = pipe(UTF_8, "--help").out();
    for (ExitCode code : ExitCode.values()) {
      assertThat(help).containsPattern("(?m)^  " + code.code() + " +\\w");
    }
    assertThat(pipe(UTF_8, "help", "weigh").out()).contains("Exit codes:", "fineweight --help");
  }

  private Path list() throws IOException {
    return Files.writeString(
        folder.resolve("list.csv"),
        "Coin,Count\n1964-D quarter,3\nM\u00FCnze ohne Namen,1\n1853 Seated Liberty quarter,1\n");
  }

  private Seen pipe(Map<String, String> environment, String... words) throws Exception {
    return PseudoTerminal.pipe(folder, environment, withMain(words));
  }

  private Seen show(Map<String, String> environment, String... words) throws Exception {
    return PseudoTerminal.show(folder, environment, withMain(words));
  }

  private static String[] withMain(String... words) {
    String[] all = new String[words.length + 1];
    all[0] = MAIN;
    System.arraycopy(words, 0, all, 1, words.length);
    return all;
  }
}
