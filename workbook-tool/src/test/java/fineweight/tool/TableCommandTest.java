package fineweight.tool;

import static fineweight.tool.Book.cells;
import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.oracle.Expected;
import fineweight.workbook.oracle.Oracle;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real command, driven by what would be typed, on invented lists; read back by POI alone. */
class TableCommandTest {
  @TempDir Path folder;

  private CommandRun table(Path file, String typed, Object... more) {
    List<Object> words =
        new ArrayList<>(
            List.of("table", file, "--spot", "XAG=30", "--lot", "Box 2", "--cost", "40"));
    words.addAll(List.of(more));
    return CommandRun.typing(typed, words.toArray());
  }

  private static List<String> rows(Path file, String sheet) throws IOException {
    List<String> lines = new ArrayList<>();
    DataFormatter shown = new DataFormatter();
    try (InputStream in = Files.newInputStream(file);
        Workbook workbook = WorkbookFactory.create(in)) {
      for (Row row : workbook.getSheet(sheet)) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.getLastCellNum(); i++) {
          cells.add(row.getCell(i) == null ? "" : shown.formatCellValue(row.getCell(i)));
        }
        lines.add(String.join("|", cells));
      }
    }
    return lines;
  }

  private Path described() throws IOException {
    return Book.xlsx()
        .sheet(
            "Coins",
            cells("No", "Lot", "Description", "Year", "Qty", "Cost", "Date bought"),
            cells("A-08", "Box 1", "1964 half dollar", 1964, 1, 12, "2026-01-05"),
            cells("A-09", "Box 1", "1921 Morgan dollar", 1921, 1, null, "2026-01-05"))
        .save(folder.resolve("coins.xlsx"));
  }

  @Test
  void savesThePiecesAsRowsOfTheLotInTheListsOwnColumns() throws Exception {
    Path file = described();
    CommandRun run =
        table(file, "1943-P war nickel\n3 merc dimes 40 42 45-D\n=1+1 dollar 1881\nundo\nsave\n");
    assertThat(run.code()).as(run.all()).isZero();
    assertThat(run.out()).contains("2 pieces are saved in rows 4 to 5 of sheet \"Coins\"");
    assertThat(rows(file, "Coins").subList(3, 5))
        .containsExactly(
            "A-10|Box 2|1943-P war nickel|1943|1|40|2026-11-25",
            "A-11|Box 2|3 merc dimes 40 42 45-D||3||2026-11-25");
    assertThat(folder.resolve("coins.xlsx.table-journal")).doesNotExist();
  }

  @Test
  void nothingButTheNewRowsChanges() throws Exception {
    Path file = described();
    Path before = Files.copy(file, folder.resolve("before.xlsx"));
    CommandRun run = table(file, "1943-P war nickel\npreview\nsave\n");
    List<CellChange> changes = new ArrayList<>();
    for (String cell : List.of("A4", "B4", "C4", "D4", "E4", "F4", "G4")) {
      assertThat(run.out()).contains("Coins!" + cell + ": ");
      changes.add(new CellChange(place(cell), "", ""));
    }
    Map<Integer, CellContent> any = Map.of(0, new CellContent.Number(BigDecimal.ONE));
    WorkbookEdit edit =
        WorkbookEdit.of(new RowsEdit("Coins", 2, 0, 6, List.of(any), new TreeMap<>()));
    assertThat(Oracle.findings(before, file, Expected.of(edit, changes))).isEmpty();
  }

  private static fineweight.workbook.CellPlace place(String cell) {
    return new fineweight.workbook.CellPlace("Coins", cell.charAt(1) - '1', cell.charAt(0) - 'A');
  }

  @Test
  void laysThePieceOutInColumnsWhereThereIsNoDescription() throws Exception {
    Path file =
        Book.xlsx()
            .sheet(
                "Coins",
                cells("Year", "Mint", "Denomination", "Type", "Count", "Notes"),
                cells(1964, "D", "quarter", "Washington", 1, ""))
            .save(folder.resolve("coins.xlsx"));
    CommandRun run = table(file, "1943-P war nickel, cleaned\nsave\n");
    assertThat(run.code()).as(run.all()).isZero();
    assertThat(rows(file, "Coins").get(2))
        .matches("1943\\|P\\|five cents\\|Jefferson[^|]*\\|1\\|1943-P war nickel, cleaned");
    assertThat(run.out()).contains("no column for lots").contains("no column for the cost");
    assertThat(CommandRun.refresh(file).out()).contains("2");
  }

  @Test
  void aTotalBelowIsNotMovedAndTheNewSheetIsOffered() throws Exception {
    Path file =
        Book.xlsx()
            .sheet(
                "Coins",
                cells("Lot", "Description", "Cost"),
                cells("Box 1", "1964 half dollar", 12),
                cells("Total", null, "=SUM(C2:C2)"))
            .save(folder.resolve("coins.xlsx"));
    byte[] before = Files.readAllBytes(file);
    CommandRun refused = table(file, "1881 Morgan dollar\nsave\nquit\n");
    assertThat(refused.out())
        .contains("Not saved: There is no room for 1 new rows under row 2 of sheet \"Coins\"")
        .contains("save sheet");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
    CommandRun moved = table(file, "save sheet\n");
    assertThat(moved.out()).contains("saved on the new sheet \"Box 2\"");
    assertThat(rows(file, "Box 2"))
        .containsExactly("Lot|Description|Cost", "Box 2|1881 Morgan dollar|40");
    assertThat(rows(file, "Coins").get(2)).startsWith("Total||");
  }

  @Test
  void tellsWhereAPieceStandsAgainstTheWholeCollection() throws Exception {
    assertThat(table(described(), "1881 Morgan dollar\n1943-P war nickel\nquit\n").out().lines())
        .filteredOn(line -> line.contains("type set: "))
        .satisfiesExactly(
            line -> assertThat(line).endsWith("duplicate"),
            line -> assertThat(line).endsWith("fills a hole"));
  }

  @Test
  void worksOnATextTableAndOnAnEmptyList() throws Exception {
    Path csv = Files.writeString(folder.resolve("coins.csv"), "Lot;Description;Cost\n");
    assertThat(table(csv, "1881 Morgan dollar\n1943-P war nickel\nsave\n").code()).isZero();
    assertThat(csv)
        .hasContent("Lot;Description;Cost\nBox 2;1881 Morgan dollar;40\nBox 2;1943-P war nickel;");
  }

  @Test
  void worksOnAnOldWorkbook() throws Exception {
    Path file =
        Book.xls()
            .sheet("Coins", cells("Lot", "Description"), cells("Box 1", "1964 half dollar"))
            .save(folder.resolve("coins.xls"));
    assertThat(table(file, "1881 Morgan dollar\nsave\n").out())
        .contains("1 piece is saved in row 3");
    assertThat(rows(file, "Coins").get(2)).isEqualTo("Box 2|1881 Morgan dollar");
  }

  @Test
  void aFileThatAnotherProgramChangesMeanwhileKeepsEverythingTyped() throws Exception {
    Path file = described();
    Files.writeString(folder.resolve("~$coins.xlsx"), "open elsewhere");
    CommandRun run = table(file, "1881 Morgan dollar\nsave\nquit\n");
    assertThat(run.out()).contains("Not saved: ").contains("everything typed is kept");
    Files.delete(folder.resolve("~$coins.xlsx"));
    assertThat(table(file, "save\n").out()).contains("1 piece is saved in row 4");
  }
}
