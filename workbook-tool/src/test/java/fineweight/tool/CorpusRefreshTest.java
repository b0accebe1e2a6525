package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.tool.judge.FilledRow;
import fineweight.tool.judge.FilledTable;
import fineweight.tool.judge.OwnParts;
import fineweight.workbook.corpus.Planting;
import fineweight.workbook.corpus.SharedFiles;
import fineweight.workbook.oracle.Oracle;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Workbooks of all kinds made by others, through the real command: each is filled and keeps all
 * that is its owner's, or is refused in one sentence and stays byte for byte the same.
 */
class CorpusRefreshTest {
  /** Files in which a list of coins cannot be filled, with the reason. */
  private static final Map<String, String> CANNOT_BE_FILLED =
      Map.of(
          "encryptAES.xlsx", "encrypted",
          "SampleSS.strict.xlsx", "Strict dialect, which is read and not written",
          "DataValidations-prompt-newlines.xlsx", "names an attribute twice: no XML",
          "workbookProtection_workbook_structure_protected.xlsx",
              "its structure is protected, so no sheet of prices can be added",
          "workbookProtection-sheet_password-2013.xlsx",
              "its structure is protected, so no sheet of prices can be added");

  @TempDir Path folder;

  private final Map<String, String> refused = new TreeMap<>();
  private final List<String> problems = new ArrayList<>();
  private int filled;
  private final long start = System.nanoTime();

  @Test
  void everyWorkbookWithFivePlantedCoinsIsFilled() throws IOException {
    for (Path original : SharedFiles.files(SharedFiles.folder("workbooks"), ".xlsx")) {
      Path file = place(original);
      try {
        Planting.plant(original, file);
      } catch (IOException unreadable) {
        SharedFiles.copy(original, file);
      }
      if (refresh(file, "--sheet", Planting.SHEET)) {
        plantedRows(file);
      }
    }
    print("planted");
    assertThat(problems).isEmpty();
    assertThat(CANNOT_BE_FILLED.keySet()).as("refused").containsAll(refused.keySet());
    assertThat(filled).isGreaterThan(30);
  }

  /** The weights are those of the Act of 1853 and of 31 U.S.C. as of 1964: 12.5 g, 900 fine. */
  private void plantedRows(Path file) throws IOException {
    FilledTable table = FilledTable.ofWorkbook(file, Planting.SHEET, 2);
    BigDecimal ounces =
        new BigDecimal("22.5")
            .divide(new BigDecimal("31.1034768"), java.math.MathContext.DECIMAL64);
    FilledRow half = table.row(4);
    check(
        half.ounces("XAG").subtract(ounces).abs().compareTo(new BigDecimal("0.00005")) < 0
            && half.melt().filter(melt -> melt.compareTo(new BigDecimal("21.70")) == 0).isPresent(),
        file + " half dollars: " + half);
    // Without a mint letter: the older alloy, or a question whose lowest answer is nothing.
    check(
        !table.row(3).hasFigure() && table.row(3).state() != FilledRow.State.VALUED,
        file + " five cents: " + table.row(3));
    check(table.row(5).state() == FilledRow.State.SEVERAL, file + " quarter: " + table.row(5));
    check(!table.row(6).hasFigure(), file + " token: " + table.row(6));
    check(table.row(9).state() == FilledRow.State.BLANK, file + " total: " + table.row(9));
  }

  @Test
  void everyWorkbookAsItIsIsFilledOrRefused() throws IOException {
    for (String ending : List.of(".xlsx", ".xls", ".csv", ".txt")) {
      for (Path original : SharedFiles.files(SharedFiles.folder("workbooks"), ending)) {
        if (!original.endsWith("INDEX.csv")) {
          refresh(SharedFiles.copy(original, place(original)));
        }
      }
    }
    print("as they are");
    assertThat(problems).isEmpty();
    assertThat(refused).hasSizeGreaterThan(30);
  }

  private Path place(Path original) throws IOException {
    String name = original.getFileName().toString();
    return Files.createDirectories(folder.resolve(name)).resolve(name);
  }

  /** Whether the file was filled. */
  private boolean refresh(Path file, String... more) throws IOException {
    byte[] before = Files.readAllBytes(file);
    Path kept = Files.write(folder.resolve("kept-" + file.getFileName()), before);
    List<String> dryWords = new ArrayList<>(List.of(more));
    dryWords.add("--dry-run");
    CommandRun dry = CommandRun.refresh(file, dryWords.toArray(String[]::new));
    check(
        java.util.Arrays.equals(before, Files.readAllBytes(file)), file + " changed by a dry run");
    CommandRun run = CommandRun.refresh(file, more);
    check(!run.all().contains("Exception"), file + ": " + run.all());
    if (run.done()) {
      filled++;
      if (file.toString().endsWith(".xlsx")) {
        Oracle.findings(kept, file, OwnParts.of(file).expected(dry.out())).stream()
            .limit(5)
            .forEach(each -> problems.add(file.getFileName() + ": " + each));
      }
      byte[] once = Files.readAllBytes(file);
      check(CommandRun.refresh(file, more).done(), file + " is refused the second time");
      check(java.util.Arrays.equals(once, Files.readAllBytes(file)), file + " changes again");
      return true;
    }
    refused.put(file.getFileName().toString(), run.code() + " " + run.complaint());
    check(java.util.Arrays.equals(before, Files.readAllBytes(file)), file + " refused but changed");
    check(isOneSentence(run), file + ": no single sentence: " + run.err());
    check(dry.code() == run.code() || dry.done(), file + ": the dry run ends otherwise");
    return false;
  }

  private static boolean isOneSentence(CommandRun run) {
    Set<Integer> codes = new TreeSet<>();
    for (ExitCode code : ExitCode.values()) {
      codes.add(code.code());
    }
    return run.code() != ExitCode.INTERNAL.code()
        && codes.contains(run.code())
        && run.err().strip().lines().count() == 1
        && run.err().strip().endsWith(".");
  }

  private void check(boolean good, String otherwise) {
    if (!good) {
      problems.add(otherwise.replace(folder.toString() + "/", ""));
    }
  }

  private void print(String name) {
    System.out.printf(
        "%s: %d filled, %d refused, %d problems in %.1f s%n",
        name, filled, refused.size(), problems.size(), (System.nanoTime() - start) / 1e9);
    refused.forEach(
        (file, words) ->
            System.out.println("  refused " + file + ": " + words.replace(folder + "/", "")));
    problems.forEach(each -> System.out.println("  PROBLEM " + each));
  }
}
