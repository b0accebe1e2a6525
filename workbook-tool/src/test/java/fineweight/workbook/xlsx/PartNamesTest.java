package fineweight.workbook.xlsx;

import static fineweight.workbook.xlsx.Edits.column;
import static fineweight.workbook.xlsx.Edits.fill;
import static fineweight.workbook.xlsx.Edits.n;
import static fineweight.workbook.xlsx.Edits.number;
import static fineweight.workbook.xlsx.Edits.row;
import static fineweight.workbook.xlsx.Edits.rows;
import static fineweight.workbook.xlsx.Edits.save;
import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.CellLook;
import fineweight.workbook.WorkbookEdit;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PartNamesTest {
  private static final WorkbookEdit FORMATTED =
      fill("Coins", 1, column(1, "Oz", CellLook.number("0.0000"), 0, number("1")));
  private static final String TYPE =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml";

  @TempDir Path folder;

  @Test
  void neverTakesTheNameOfAPartThatNobodyPointsTo() throws Exception {
    Path file =
        new RawWorkbook()
            .sheet("Coins", rows(row(1, n("A1", "1"))))
            .part("xl/Styles.xml", "<mine/>")
            .type("xl/Styles.xml", TYPE)
            .write(folder.resolve("coins.xlsx"));
    save(file, FORMATTED);
    assertThat(RawWorkbook.read(file, "xl/Styles.xml")).endsWith("<mine/>");
    assertThat(RawWorkbook.read(file, "xl/styles1.xml")).contains("0.0000");
    assertThat(RawWorkbook.read(file, "[Content_Types].xml"))
        .contains("PartName=\"/xl/Styles.xml\"", "PartName=\"/xl/styles1.xml\"");
    assertThat(RawWorkbook.read(file, "xl/_rels/workbook.xml.rels"))
        .contains("Target=\"/xl/styles1.xml\"");
    assertThat(save(file, FORMATTED).written()).isFalse();
  }

  @Test
  void namesATypeOnce() throws Exception {
    Path file =
        new RawWorkbook()
            .sheet("Coins", rows(row(1, n("A1", "1"))))
            .type("xl/styles.xml", TYPE)
            .write(folder.resolve("coins.xlsx"));
    save(file, FORMATTED);
    assertThat(RawWorkbook.read(file, "[Content_Types].xml").split("/xl/styles.xml")).hasSize(2);
  }
}
