package fineweight.window;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.Metal;
import fineweight.standard.Standards;
import fineweight.tool.CommandRun;
import fineweight.workbook.open.AnyWorkbook;
import fineweight.workbook.save.SafeSave;
import fineweight.workbook.xlsx.XlsxWorkbook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the window does with a file, without a screen; refusals speak of fields, not of options. */
class FillingJobTest {
  private static final SafeSave SAVE = SafeSave.onDisk();

  private final FillingJob job =
      new FillingJob(
          AnyWorkbook.of(file -> XlsxWorkbook.open(file, SAVE), SAVE),
          Standards.catalogue(),
          "US",
          CommandRun.DAY);

  @TempDir Path folder;

  private Path list(String... lines) throws IOException {
    return Files.writeString(folder.resolve("coins.csv"), String.join("\n", lines) + "\n");
  }

  private static Wanted wanted(Path file, String silver, String others, String currency) {
    return new Wanted(
        file, Optional.empty(), Map.of(Metal.SILVER, silver), others, currency, false);
  }

  @Test
  void aLookWritesNothingAndTellsEveryCell() throws IOException {
    Path file = list("Year,Denomination,Count", "1964,half dollar,2");
    String before = Files.readString(file);
    Outcome outcome = job.look(wanted(file, "30", "", ""));
    assertThat(outcome.refusal()).isEmpty();
    assertThat(outcome.report().orElseThrow().changedCells())
        .isEqualTo(outcome.changes().size())
        .isPositive();
    assertThat(file).content().isEqualTo(before);
  }

  @Test
  void aPriceMayHaveItsOwnUnitAndCurrency() throws IOException {
    Path file = list("Year,Denomination,Count", "1964,half dollar,2");
    // 31.1034768 g in the troy ounce: NIST Handbook 44, appendix C.
    Outcome perGram = job.look(wanted(file, "1/g", "", "eur"));
    Outcome perOunce = job.look(wanted(file, "31.1034768", "", "EUR"));
    assertThat(perGram.report().orElseThrow().figures().money().least())
        .isEqualByComparingTo(perOunce.report().orElseThrow().figures().money().least())
        .isPositive();
    assertThat(perGram.report().orElseThrow().figures().currency()).isEqualTo("EUR");
  }

  @Test
  void whatCannotBeUsedIsSaidInTheWordsOfTheWindow() throws IOException {
    Path file = list("Year,Denomination,Count", "1964,half dollar,2");
    assertThat(job.look(wanted(file, "thirty", "", "")).refusal().orElseThrow())
        .contains("thirty", "silver")
        .endsWith("30.25.");
    assertThat(job.look(wanted(file, "30", "", "XXY")).refusal().orElseThrow())
        .contains("the field Currency", "XXY");
    assertThat(job.look(wanted(file, "30", "Cu=9500/t Cu=1/t", "")).refusal().orElseThrow())
        .contains("copper is priced twice");
    assertThat(job.fill(wanted(file, "", "", "")).refusal().orElseThrow())
        .contains("type today's price")
        .doesNotContain("--");
    assertThat(job.look(wanted(folder.resolve("none.xlsx"), "30", "", "")).refusal().orElseThrow())
        .contains("none.xlsx");
  }

  @Test
  void badRowsStopTheRunUntilTheBoxIsTicked() throws IOException {
    Path file = list("Year,Denomination,Count", "1964,half dollar,2", "1964,dime,-3");
    String refusal = job.fill(wanted(file, "30", "", "")).refusal().orElseThrow();
    assertThat(refusal).contains("tick \"Leave out bad rows\"").doesNotContain("--");
    Wanted ticked = new Wanted(file, Optional.empty(), Map.of(Metal.SILVER, "30"), "", "", true);
    Outcome outcome = job.fill(ticked);
    assertThat(outcome.refusal()).isEmpty();
    assertThat(Sentences.filled(outcome.report().orElseThrow()))
        .startsWith("Filled: ")
        .contains("C3")
        .endsWith(Sentences.CAUTION);
    assertThat(file).content().contains("valued");
    assertThat(Sentences.filled(job.fill(ticked).report().orElseThrow()))
        .startsWith("Nothing had to change");
  }
}
