package fineweight.tool;

import static fineweight.tool.Book.cells;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real command on invented lists; read back by POI, or as text. */
class SplitCommandTest {
  @TempDir Path folder;

  private static List<String> rows(Path file) throws IOException {
    List<String> lines = new ArrayList<>();
    DataFormatter shown = new DataFormatter();
    try (InputStream in = Files.newInputStream(file);
        Workbook workbook = WorkbookFactory.create(in)) {
      for (Row row : workbook.getSheet("Coins")) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < row.getLastCellNum(); i++) {
          texts.add(text(row.getCell(i), shown));
        }
        lines.add(String.join("|", texts).replaceAll("\\|+$", ""));
      }
    }
    return lines;
  }

  private static String text(Cell cell, DataFormatter shown) {
    boolean formula = cell != null && cell.getCellType() == CellType.FORMULA;
    return formula ? "=" + cell.getCellFormula() : shown.formatCellValue(cell);
  }

  private static Book list(Book book) {
    return book.sheet(
        "Coins",
        cells("No", "Lot", "Description", "Qty", "Cost", "Twice", "My points"),
        cells("A-08", "Box 1", "3 merc dimes 40 42 45-D", 3, 12, "=E2*2", 7),
        cells("A-09", "Box 1", "1921 Morgan dollar", 1, 30, "=E3*2", 9),
        cells("A-10", "Box 2", "5 dimes 1943 1944", 5, 10, "=E4*2", 1),
        cells("A-11", "Box 2", "1964 and 1965 quarter", 2, 3, "=E5*2", 2));
  }

  @Test
  void eachCoinGetsItsOwnRowAndMoneyStaysWithTheFirst() throws Exception {
    for (Book book : List.of(Book.xlsx(), Book.xls())) {
      Path file = list(book).save(folder.resolve("coins-" + book.hashCode()));
      CommandRun run = CommandRun.of("split", file);
      assertThat(run.code()).as(run.all()).isZero();
      assertThat(run.out())
          .contains("5 pieces, but 2 dates")
          .contains("3 rows added under row 5 of sheet \"Coins\"");
      assertThat(rows(file))
          .containsExactly(
              "No|Lot|Description|Qty|Cost|Twice|My points",
              "A-08|Box 1|1940 merc dimes|1|12|=E2*2|7",
              "A-09|Box 1|1921 Morgan dollar|1|30|=E3*2|9",
              "A-10|Box 2|5 dimes 1943 1944|5|10|=E4*2|1",
              "A-11|Box 2|1964 quarter|1|3|=E5*2|2",
              "A-12|Box 1|1942 merc dimes|1",
              "A-13|Box 1|1945-D merc dimes|1",
              "A-14|Box 2|1965 quarter|1");
    }
  }

  @Test
  void aDryRunWritesNothingAndTellsTheRows() throws Exception {
    Path file = list(Book.xlsx()).save(folder.resolve("coins.xlsx"));
    byte[] before = Files.readAllBytes(file);
    CommandRun run = CommandRun.of("split", file, "--dry-run");
    assertThat(run.out())
        .contains("stays here:  1940 merc dimes")
        .contains("new row:     1945-D merc dimes")
        .contains("3 rows would be added; nothing was written");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void aTextTableKeepsItsManner() throws Exception {
    Path file = folder.resolve("coins.csv");
    Files.writeString(
        file, "Coin;Paid\r\n\"1943-P, 1944-D & 1945-S nickel\";\"4,50\"\r\n1921 Morgan;30\r\n");
    CommandRun run = CommandRun.of("split", file);
    assertThat(run.code()).as(run.all()).isZero();
    assertThat(Files.readString(file))
        .isEqualTo(
            "Coin;Paid\r\n\"1943-P nickel\";\"4,50\"\r\n1921 Morgan;30\r\n1944-D nickel;\r\n1945-S nickel;\r\n");
  }

  @Test
  void metalOfTheListIsTheSameAfterwards() throws Exception {
    Path whole =
        Book.xlsx()
            .sheet(
                "Coins",
                cells("Description"),
                cells("3 merc dimes 40 42 45-D"),
                cells("1936, 1937 and 1938 walking liberty half"))
            .save(folder.resolve("whole.xlsx"));
    Path apart = Files.copy(whole, folder.resolve("apart.xlsx"));
    assertThat(CommandRun.of("split", apart).out()).contains("4 rows added");
    assertThat(ouncesAndPieces(apart)).isEqualTo(ouncesAndPieces(whole)).isNotEmpty();
  }

  private String ouncesAndPieces(Path file) throws IOException {
    Path result = folder.resolve("result.json");
    assertThat(CommandRun.refresh(file, "--result", result.toString()).code()).isZero();
    JsonNode read = new ObjectMapper().readTree(result.toFile());
    return read.findValues("fineTroyOunces").toString() + read.findValues("pieces");
  }

  @Test
  void nothingToSplitIsSaidAndNothingWritten() throws Exception {
    Path file =
        Book.xlsx()
            .sheet("Coins", cells("Description"), cells("1964 quarter"), cells("dimes 1940-1945"))
            .save(folder.resolve("coins.xlsx"));
    CommandRun run = CommandRun.of("split", file);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("nothing was written");
    assertThat(folder.toFile().list()).containsExactly("coins.xlsx");
  }
}
