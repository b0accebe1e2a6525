package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.validity.WorkbookValidator;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A new workbook for a lot and for a set, written and filled by the real commands. */
class NewWorkbooksTest {
  /** NIST Handbook 44, Appendix C. */
  private static final BigDecimal OUNCE = new BigDecimal("31.1034768");

  @TempDir Path folder;

  private Path made(String kind, String... more) throws IOException {
    Path file = folder.resolve(kind + ".xlsx");
    Object[] words = new Object[4 + more.length];
    words[0] = "starter";
    words[1] = file;
    words[2] = "--kind";
    words[3] = kind;
    System.arraycopy(more, 0, words, 4, more.length);
    CommandRun run = CommandRun.of(words);
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(WorkbookValidator.findings(file)).isEmpty();
    return file;
  }

  private static void filled(Path file) throws IOException {
    CommandRun run = CommandRun.refresh(file);
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(WorkbookValidator.findings(file)).isEmpty();
    assertThat(CommandRun.refresh(file).out()).contains("Nothing had to change");
  }

  private static int column(Sheet sheet, int headings, String heading) {
    for (Cell cell : sheet.getRow(headings)) {
      if (cell.toString().equals(heading)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError("no column " + heading);
  }

  private static String at(Path file, String sheet, String heading, int row) throws IOException {
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      Sheet found = workbook.getSheet(sheet);
      Cell cell = found.getRow(row - 1).getCell(column(found, 0, heading));
      boolean number =
          cell.getCellType() == CellType.NUMERIC || cell.getCellType() == CellType.FORMULA;
      return number
          ? new BigDecimal(cell.getNumericCellValue())
              .setScale(2, RoundingMode.HALF_UP)
              .toPlainString()
          : cell.getStringCellValue();
    }
  }

  private static String melt(String grams) {
    return new BigDecimal(grams)
        .multiply(new BigDecimal("30"))
        .divide(OUNCE, 2, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /** Coinage Act of 1873, section 15; war nickels: 5 g, 350 silver; Act of 1965: 11.5 g, 4.6 g. */
  @Test
  void aLotIsWorthWhatItsMetalIsAndSharesItsOneCost() throws IOException {
    Path file = made("lot-opening");
    filled(file);
    assertThat(at(file, "Lot", "Melt USD", 2)).isEqualTo(melt("56.25"));
    assertThat(at(file, "Lot", "Melt USD", 3)).isEqualTo(melt("49.5"));
    assertThat(at(file, "Lot", "Melt USD", 4)).isEqualTo(melt("21"));
    assertThat(at(file, "Lot", "State", 5)).contains("several");
    assertThat(at(file, "Lot", "Melt USD", 6)).isEqualTo(melt("27.6"));
    assertThat(at(file, "Lot", "State", 11)).contains("nothing to value");
    BigDecimal shares = BigDecimal.ZERO;
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      Sheet sheet = workbook.getSheet("Lot");
      int column = column(sheet, 0, "Cost share USD");
      for (Row row : sheet) {
        Cell cell = row.getCell(column);
        if (row.getRowNum() > 0 && cell != null && cell.getCellType() == CellType.NUMERIC) {
          shares = shares.add(BigDecimal.valueOf(cell.getNumericCellValue()));
        }
      }
      assertThat(workbook.getSheet("Fineweight lots")).isNotNull();
    }
    assertThat(shares).isEqualByComparingTo("180");
  }

  @Test
  void aSetTellsWhichPlaceEachPieceFills() throws IOException {
    Path file = made("type-set");
    filled(file);
    assertThat(at(file, "Inventory", "Type set", 2)).startsWith("keep: fills a hole");
    assertThat(at(file, "Inventory", "Type set", 3)).contains("duplicate");
    assertThat(at(file, "Inventory", "Melt USD", 6)).isEqualTo(melt("11.25"));
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      Sheet set = workbook.getSheet("Fineweight type set");
      StringBuilder words = new StringBuilder();
      set.forEach(row -> row.forEach(cell -> words.append(cell).append('\n')));
      // Ten places; nickel, dime, quarter, half and Morgan dollar are there.
      assertThat(words).contains("Type set: My set", "5 of 10 places filled", "Peace dollar");
    }
  }

  /** What a person types into the empty one is understood as in any other list. */
  @Test
  void anEmptyOneIsFilledOnceSomebodyTypes() throws IOException {
    for (String kind : new String[] {"lot-opening", "type-set"}) {
      Path file = made(kind, "--empty");
      String sheet = kind.equals("type-set") ? "Inventory" : "Lot";
      try (Workbook workbook = WorkbookFactory.create(Files.newInputStream(file))) {
        Sheet list = workbook.getSheet(sheet);
        assertThat(list.getLastRowNum()).isZero();
        Row row = list.createRow(1);
        row.createCell(column(list, 0, "Year")).setCellValue(1964);
        row.createCell(column(list, 0, "Type")).setCellValue("Kennedy half dollar");
        row.createCell(column(list, 0, "Count")).setCellValue(2);
        try (OutputStream out = Files.newOutputStream(file)) {
          workbook.write(out);
        }
      }
      CommandRun run = CommandRun.refresh(file);
      assertThat(run.code()).as(run.err()).isZero();
      assertThat(at(file, sheet, "Melt USD", 2)).as(kind).isEqualTo(melt("22.5"));
    }
  }

  @Test
  void anUnknownKindIsRefusedWithTheKindsThereAre() {
    CommandRun run = CommandRun.of("starter", folder.resolve("a.xlsx"), "--kind", "album");
    assertThat(run.code()).isNotZero();
    assertThat(run.err()).contains("lot-opening", "type-set", "inventory");
    assertThat(folder).isEmptyDirectory();
  }
}
