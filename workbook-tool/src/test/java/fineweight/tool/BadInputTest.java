package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.tool.judge.FilledRow;
import fineweight.tool.judge.FilledTable;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a person can get wrong: one sentence that names the place and the remedy, the documented
 * exit code, the workbook as it was, and no trace of the program's inside.
 */
class BadInputTest {
  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void goodFile() throws IOException {
    file = Book.ofCoins(1964, "half dollar", 2, 20).save(folder.resolve("coins.xlsx"));
  }

  /** The sentence of a refused call, after all that holds for every refusal was looked at. */
  private String refused(ExitCode code, Object... words) throws IOException {
    byte[] before = Files.isRegularFile(file) ? Files.readAllBytes(file) : new byte[0];
    List<String> names = names();
    CommandRun run = CommandRun.of(words);
    assertThat(run.all()).doesNotContain("Exception", "\tat ", "java.", "null");
    assertThat(run.code()).as(run.all()).isEqualTo(code.code());
    assertThat(run.out()).isEmpty();
    List<String> lines =
        run.err()
            .lines()
            .filter(line -> !line.matches("(See: |Did you mean|Possible solutions).*"))
            .toList();
    assertThat(lines).as(run.err()).hasSize(1);
    assertThat(lines.get(0)).endsWith(".");
    if (Files.isRegularFile(file)) {
      assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }
    assertThat(names()).isEqualTo(names);
    return lines.get(0);
  }

  private String refusedRefresh(ExitCode code) throws IOException {
    return refused(code, "refresh", file, "--spot", "XAG=30");
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(each -> each.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void theGoodFileItselfWorks() {
    assertThat(CommandRun.refresh(file).code()).isZero();
  }

  @Test
  void anAbsentFile() throws IOException {
    file = folder.resolve("absent.xlsx");
    assertThat(refusedRefresh(ExitCode.FILE)).contains("absent.xlsx");
    assertThat(refused(ExitCode.FILE, "take-out", file)).contains("absent.xlsx");
    assertThat(refused(ExitCode.FILE, "restore", file, "--backup", "1")).contains("absent.xlsx");
  }

  @Test
  void aFolder() throws IOException {
    file = Files.createDirectory(folder.resolve("coins"));
    assertThat(refusedRefresh(ExitCode.FILE)).contains("coins").contains("folder");
  }

  @Test
  void aTextNamedXlsx() throws IOException {
    file = Files.writeString(folder.resolve("letter.xlsx"), "Dear Sir,\nthe coins are sold.\n");
    assertThat(refusedRefresh(ExitCode.UNSUPPORTED)).contains("letter.xlsx").contains(".csv");
  }

  @Test
  void anEmptyFile() throws IOException {
    file = Files.createFile(folder.resolve("empty.xlsx"));
    assertThat(refusedRefresh(ExitCode.DAMAGED)).contains("empty.xlsx");
  }

  @Test
  void aCutWorkbook() throws IOException {
    byte[] whole = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(whole, whole.length / 2));
    assertThat(refusedRefresh(ExitCode.DAMAGED)).contains("coins.xlsx");
  }

  @Test
  void aReadOnlyFile() throws IOException {
    assertThat(file.toFile().setReadOnly()).isTrue();
    assertThat(refusedRefresh(ExitCode.FILE)).contains("coins.xlsx").contains("read-only");
  }

  @Test
  void aReadOnlyFolder() throws IOException {
    Path closed = Files.createDirectory(folder.resolve("closed"));
    file = Files.copy(file, closed.resolve("coins.xlsx"));
    assertThat(closed.toFile().setWritable(false)).isTrue();
    try {
      Assumptions.assumeFalse(
          Files.isWritable(closed), "whoever runs the tests may write into every folder");
      assertThat(refusedRefresh(ExitCode.FILE)).contains("closed");
    } finally {
      assertThat(closed.toFile().setWritable(true)).isTrue();
    }
  }

  @Test
  void aFileThatAnOfficeHolds() throws IOException {
    Files.writeString(folder.resolve(".~lock.coins.xlsx#"), ",owner,desk,25.11.2026 12:00,;");
    assertThat(refusedRefresh(ExitCode.IN_USE)).contains("coins.xlsx");
  }

  @Test
  void noHeadings() throws IOException {
    file = Book.xlsx().sheet("Notes", Book.cells("to do", 12), Book.cells("milk", 2)).save(file);
    assertThat(refusedRefresh(ExitCode.NO_INVENTORY)).contains("coins.xlsx").contains("Notes");
  }

  @Test
  void headingsWithoutAnyCoin() throws IOException {
    file =
        Book.xlsx()
            .sheet("Rates", Book.cells("Description", "Rate"), Book.cells("Overnight", 5))
            .save(file);
    assertThat(refusedRefresh(ExitCode.NO_INVENTORY)).contains("Rates").contains("--sheet");
  }

  @Test
  void twoSheetsThatCouldBeIt() throws IOException {
    Object[][] rows = {Book.cells("Year", "Denomination", "Count"), Book.cells(1964, "dime", 3)};
    file = Book.xlsx().sheet("Mine", rows).sheet("Hers", rows).save(file);
    assertThat(refusedRefresh(ExitCode.NO_INVENTORY))
        .contains("\"Mine\"")
        .contains("\"Hers\"")
        .contains("--sheet");
    assertThat(CommandRun.refresh(file, "--sheet", "Hers").code()).isZero();
  }

  @Test
  void aSheetThatIsNotThere() throws IOException {
    assertThat(
            refused(
                ExitCode.NO_INVENTORY, "refresh", file, "--spot", "XAG=30", "--sheet", "Silver"))
        .contains("Silver")
        .contains("Coins");
  }

  @Test
  void aNegativeCount() throws IOException {
    file = Book.ofCoins(1964, "half dollar", -2).save(file);
    assertThat(refusedRefresh(ExitCode.BAD_CELLS))
        .contains("coins.xlsx, Coins!C2")
        .contains("negative");
  }

  @Test
  void aYearOfFiveDigits() throws IOException {
    file = Book.ofCoins(19999, "dime", 1).save(file);
    assertThat(refusedRefresh(ExitCode.BAD_CELLS))
        .contains("coins.xlsx, Coins!A2")
        .contains("19999");
  }

  @Test
  void anErrorInTheYear() throws IOException {
    file = Book.ofCoins("=1900+64/0", "dime", 1).save(file);
    assertThat(refusedRefresh(ExitCode.BAD_CELLS))
        .contains("coins.xlsx, Coins!A2")
        .contains("#DIV/0!");
  }

  @Test
  void badRowsCanBeLeftOut() throws IOException {
    file = Book.ofCoins(19999, "dime", 1).row("Coins", 1964, "half dollar", 2).save(file);
    CommandRun run = CommandRun.refresh(file, "--leave-out-bad-rows");
    assertThat(run.code()).isZero();
    assertThat(run.err()).contains("Coins!A2").doesNotContain("Exception");
    FilledTable table = FilledTable.ofWorkbook(file, "Coins", 1);
    assertThat(table.row(2).state()).isEqualTo(FilledRow.State.NOT_KNOWN);
    assertThat(table.row(3).state()).isEqualTo(FilledRow.State.VALUED);
  }

  /**
   * Doubt about the year is asked back where it matters and not where the decade is of one metal.
   */
  @Test
  void aDoubtfulYear() throws IOException {
    file =
        Book.ofCoins("1964?", "half dollar", 1).row("Coins", "1954?", "half dollar", 1).save(file);
    assertThat(CommandRun.refresh(file).code()).isZero();
    FilledTable table = FilledTable.ofWorkbook(file, "Coins", 1);
    assertThat(table.row(2).state()).isEqualTo(FilledRow.State.SEVERAL);
    assertThat(table.row(2).text("Note")).isNotEmpty();
    assertThat(table.row(3).state()).isIn(FilledRow.State.VALUED, FilledRow.State.SEVERAL);
    assertThat(table.row(3).ounces("XAG"))
        .isBetween(new BigDecimal("0.3616"), new BigDecimal("0.3617"));
  }

  @Test
  void noPriceAnywhere() throws IOException {
    assertThat(refused(ExitCode.USAGE, "refresh", file)).contains("--spot");
  }

  @ParameterizedTest
  @CsvSource({
    "XAG=, silver",
    "XAG=0, more than zero",
    "XAG=-30, more than zero",
    "XAG=thirty, thirty",
    "XAG=1e, 1e",
    "XAG, equals sign",
    "'XAG=30,5', '30,5'",
    "=30, no metal",
    "XYZ=30, XYZ",
    "XAG=30/stone, stone",
    "Cu=9500, unit",
    "XAG=NaN, NaN"
  })
  void aPriceThatIsNone(String price, String named) throws IOException {
    assertThat(refused(ExitCode.USAGE, "refresh", file, "--spot", price)).contains(named);
    assertThat(refused(ExitCode.USAGE, "explain", "--spot", price, "1964", "dime")).contains(named);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "not json",
        "[]",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": {\"XAG\": \"30\"}",
        "{\"currency\": \"USD\", \"prices\": {\"XAG\": \"30\"}}",
        "{\"date\": \"2026-11-25\", \"prices\": {\"XAG\": \"30\"}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\"}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": {}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": [30]}",
        "{\"date\": \"25.11.2026\", \"currency\": \"USD\", \"prices\": {\"XAG\": \"30\"}}",
        "{\"date\": 20261125, \"currency\": \"USD\", \"prices\": {\"XAG\": \"30\"}}",
        "{\"date\": \"2026-02-30\", \"currency\": \"USD\", \"prices\": {\"XAG\": \"30\"}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"ZZZ\", \"prices\": {\"XAG\": \"30\"}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": {\"XAG\": \"0\"}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": {\"XAG\": \"-1\"}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": {\"XAG\": null}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": {\"XAG\": true}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": {\"XAG\": {\"bid\": 30}}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": {\"XAG\": [30]}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": {\"Zz\": \"30\"}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": {\"Cu\": \"9500\"}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": {\"XAG\": \"30\", \"Ag\": \"31\"}}",
        "{\"date\": \"2026-11-25\", \"currency\": \"USD\", \"prices\": {\"XAG\": \"30\", \"XAG\": \"31\"}}"
      })
  void aSpotFileThatIsNone(String json) throws IOException {
    Path prices = Files.writeString(folder.resolve("prices.json"), json);
    assertThat(refused(ExitCode.USAGE, "refresh", file, "--spot-file", prices))
        .contains("prices.json");
  }

  @Test
  void aSpotFileThatIsNotThereOrAFolder() throws IOException {
    assertThat(
            refused(ExitCode.USAGE, "refresh", file, "--spot-file", folder.resolve("prices.json")))
        .contains("prices.json");
    assertThat(refused(ExitCode.USAGE, "refresh", file, "--spot-file", folder))
        .contains(folder.toString());
  }

  @Test
  void aHugeSpotFile() throws IOException {
    Path prices = Files.write(folder.resolve("prices.json"), new byte[1_200_000]);
    assertThat(refused(ExitCode.USAGE, "refresh", file, "--spot-file", prices)).contains("large");
  }

  @Test
  void aSpotFileInAnotherCurrencyThanTheOption() throws IOException {
    Path prices =
        Files.writeString(
            folder.resolve("prices.json"),
            "{\"date\": \"2026-11-25\", \"currency\": \"EUR\", \"prices\": {\"XAG\": \"30\"}}");
    assertThat(refused(ExitCode.USAGE, "refresh", file, "--spot-file", prices, "--currency", "USD"))
        .contains("EUR")
        .contains("USD");
  }

  @ParameterizedTest
  @CsvSource({
    "--currency, ZZZ, ZZZ",
    "--currency, usd, usd",
    "--wear, 100, wear",
    "--wear, -1, wear",
    "--wear, much, wear",
    "--spot-date, 25.11.2026, 25.11.2026",
    "--spot-date, 2026-13-01, 2026-13-01",
    "--home, ZZ, ZZ",
    "--dryrun, x, --dryrun",
    "--sport, XAG=30, --sport"
  })
  void anOptionThatCannotBe(String option, String value, String named) throws IOException {
    assertThat(refused(ExitCode.USAGE, "refresh", file, "--spot", "XAG=30", option, value))
        .contains(named);
  }

  @Test
  void noFileAtAll() throws IOException {
    assertThat(refused(ExitCode.USAGE, "refresh", "--spot", "XAG=30")).contains("WORKBOOK");
    assertThat(refused(ExitCode.USAGE, "explain")).contains("WORDS");
    assertThat(refused(ExitCode.USAGE, "refrehs", file)).contains("refrehs");
  }

  @Test
  void aBackupThatIsNotThere() throws IOException {
    assertThat(refused(ExitCode.FILE, "restore", file, "--backup", "7")).contains("7");
  }

  @Test
  void allCodesStandInTheHelp() {
    String help = CommandRun.of("--help").out();
    List<String> missing = new ArrayList<>();
    for (ExitCode code : ExitCode.values()) {
      if (!help.contains(code.code() + "  ")) {
        missing.add(code.toString());
      }
    }
    assertThat(missing).isEmpty();
  }
}
