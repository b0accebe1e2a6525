package fineweight.workbook.corpus;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every workbook of the corpus through the real engine. */
class CorpusTest {
  /** Files that may be refused, with the reason; every other must be filled. */
  private static final Map<String, String> MAY_BE_REFUSED =
      Map.of(
          "encryptAES.xlsx", "encrypted",
          "SampleSS.strict.xlsx", "Strict dialect: read only",
          "DataValidations-prompt-newlines.xlsx",
              "names an attribute twice, no XML reader takes it");

  /** What may be refused beside these where the columns go into the owner's own first sheet. */
  private static final Set<String> OWN_SHEET_MAY_BE_REFUSED =
      Set.of("workbookProtection-sheet_password-2013.xlsx", "world-shoebox.xlsx");

  private static final String PLANTED = "five planted rows";

  @TempDir Path folder;

  @Test
  void plantedRowsAreFilled() throws IOException {
    judge(PLANTED, MAY_BE_REFUSED.keySet(), this::planted);
  }

  @Test
  void plantedRowsAreFilledWithASheetOfOurOwn() throws IOException {
    Set<String> refused = new TreeSet<>(MAY_BE_REFUSED.keySet());
    refused.add("workbookProtection_workbook_structure_protected.xlsx");
    refused.add("workbookProtection-sheet_password-2013.xlsx");
    judge("planted rows and an own sheet", refused, this::plantedWithSheet);
  }

  @Test
  void theOwnersFirstSheetIsFilled() throws IOException {
    Set<String> refused = new TreeSet<>(MAY_BE_REFUSED.keySet());
    refused.addAll(OWN_SHEET_MAY_BE_REFUSED);
    judge("first sheet", refused, this::firstSheet);
  }

  /** One file's way through the engine. */
  private interface Trial {
    RoundTrip.Outcome of(Path original, Path place) throws IOException;
  }

  private void judge(String name, Set<String> mayBeRefused, Trial trial) throws IOException {
    Map<String, String> refused = new TreeMap<>();
    List<String> failed = new ArrayList<>();
    int passed = 0;
    for (Path original : workbooks()) {
      // Its million characters are read in the first round, which is enough.
      if (original.endsWith("large_strings.xlsx") && !name.equals(PLANTED)) {
        continue;
      }
      String fileName = original.getFileName().toString();
      Path place = Files.createDirectories(folder.resolve(name).resolve(fileName));
      RoundTrip.Outcome outcome = trial.of(original, place.resolve(fileName));
      outcome.problems().stream().limit(6).forEach(each -> failed.add(fileName + ": " + each));
      outcome
          .refusal()
          .ifPresent(refusal -> refused.put(fileName, refusal.kind() + " " + refusal.getMessage()));
      passed += outcome.passed() ? 1 : 0;
    }
    long failures = failed.stream().map(each -> each.split(": ")[0]).distinct().count();
    System.out.printf("%s: %d pass, %d refused, %d fail%n", name, passed, refused.size(), failures);
    refused.forEach((file, sentence) -> System.out.println("  refused " + file + ": " + sentence));
    failed.forEach(each -> System.out.println("  FAILED " + each));
    assertThat(failed).isEmpty();
    assertThat(mayBeRefused).as("refused").containsAll(refused.keySet());
    assertThat(passed).isPositive();
  }

  private static List<Path> workbooks() throws IOException {
    return Stream.concat(
            SharedFiles.files(SharedFiles.folder("workbooks"), ".xlsx").stream(),
            SharedFiles.files(SharedFiles.folder("inventories"), ".xlsx").stream())
        .toList();
  }

  private RoundTrip.Outcome planted(Path original, Path copy) throws IOException {
    plant(original, copy);
    return new RoundTrip(Opening.XLSX, copy, Filling.ofPlanted(), false).run();
  }

  private RoundTrip.Outcome plantedWithSheet(Path original, Path copy) throws IOException {
    plant(original, copy);
    return new RoundTrip(Opening.XLSX, copy, Filling.ofPlanted(), true).run();
  }

  /** Plants where that is possible; an encrypted or malformed file is tried as it is. */
  private static void plant(Path original, Path copy) throws IOException {
    try {
      Planting.plant(original, copy);
    } catch (IOException e) {
      SharedFiles.copy(original, copy);
    }
  }

  private RoundTrip.Outcome firstSheet(Path original, Path copy) throws IOException {
    SharedFiles.copy(original, copy);
    Filling filling;
    try (Workbook workbook = Opening.XLSX.open(copy)) {
      String sheet =
          workbook.sheets().stream()
              .filter(SheetSummary::isTable)
              .map(SheetSummary::name)
              .findFirst()
              .orElseThrow();
      Workbook.UsedArea used = workbook.usedArea(sheet);
      int last = Math.max(3, Math.min(used.lastRow(), 200));
      filling = new Filling(sheet, 0, 1, last, used.lastColumn() + 1);
    } catch (WorkbookRefusal refusal) {
      filling = new Filling("none", 0, 1, 2, 0);
    }
    return new RoundTrip(Opening.XLSX, copy, filling, false).run();
  }

  @Test
  void plantingItselfKeepsTheOwnersParts() throws IOException {
    Path original = SharedFiles.folder("workbooks").resolve("WithThreeCharts.xlsx");
    Path copy = folder.resolve("planted.xlsx");
    Planting.plant(original, copy);
    Set<String> sheets =
        OwnerCells.read(copy, place -> false).orElseThrow().keySet().stream()
            .map(CellPlace::sheet)
            .collect(Collectors.toSet());
    assertThat(sheets).contains(Planting.SHEET);
  }
}
