package fineweight.workbook.corpus;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.oracle.Expected;
import fineweight.workbook.oracle.Oracle;
import fineweight.workbook.validity.WorkbookValidator;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows put under the last row of the first sheet of every workbook of the corpus. */
class RowsCorpusTest {
  private static final List<Map<Integer, CellContent>> ROWS =
      List.of(
          Map.of(0, new CellContent.Text("=1+1"), 1, new CellContent.Number(BigDecimal.TEN)),
          Map.of(0, new CellContent.Day(LocalDate.of(2026, 11, 2))));

  @TempDir Path folder;

  @Test
  void nothingElseChanges() throws IOException {
    List<String> failed = new ArrayList<>();
    Map<String, String> refused = new TreeMap<>();
    int passed = 0;
    for (String corpus : List.of("workbooks", "inventories")) {
      for (Path original : SharedFiles.files(SharedFiles.folder(corpus), ".xlsx")) {
        // A million characters in a cell are read elsewhere.
        if (!original.endsWith("large_strings.xlsx")) {
          String name = original.getFileName().toString();
          try {
            problems(original).forEach(each -> failed.add(name + ": " + each));
            passed++;
          } catch (WorkbookRefusal refusal) {
            refused.put(name, refusal.getMessage());
          }
        }
      }
    }
    System.out.printf("rows under a list: %d filled, refused: %s%n", passed, refused);
    assertThat(failed).isEmpty();
    assertThat(passed).isGreaterThan(refused.size() * 5);
  }

  private List<String> problems(Path original) throws IOException, WorkbookRefusal {
    Path kept = SharedFiles.copy(original, folder.resolve("kept-" + original.getFileName()));
    Path file = SharedFiles.copy(original, folder.resolve(original.getFileName().toString()));
    List<CellChange> changes = new ArrayList<>();
    WorkbookEdit edit;
    List<String> problems = new ArrayList<>();
    try (Workbook workbook = Opening.XLSX.open(file)) {
      edit = WorkbookEdit.of(rows(workbook));
      workbook.preview(edit, changes::add);
      long changed = workbook.save(edit).changedCells();
      if (changed != changes.size()) {
        problems.add(changed + " cells changed, " + changes.size() + " were announced");
      }
    }
    problems.addAll(Oracle.findings(kept, file, Expected.of(edit, changes)));
    List<String> faults = new ArrayList<>(WorkbookValidator.findings(file));
    faults.removeAll(WorkbookValidator.findings(kept));
    problems.addAll(faults);
    byte[] filled = Files.readAllBytes(file);
    try (Workbook workbook = Opening.XLSX.open(file)) {
      if (workbook.save(edit).written()
          || !java.util.Arrays.equals(filled, Files.readAllBytes(file))) {
        problems.add("the same rows again changed the file");
      }
    }
    return problems;
  }

  private static RowsEdit rows(Workbook workbook) throws WorkbookRefusal {
    String sheet =
        workbook.sheets().stream()
            .filter(SheetSummary::isTable)
            .map(SheetSummary::name)
            .findFirst()
            .orElseThrow();
    Workbook.UsedArea used = workbook.usedArea(sheet);
    return new RowsEdit(
        sheet,
        Math.max(0, used.lastRow()),
        0,
        Math.max(1, Math.min(used.lastColumn(), 40)),
        ROWS,
        new TreeMap<>());
  }
}
