package fineweight.workbook.xlsx;

import static fineweight.workbook.xlsx.Edits.column;
import static fineweight.workbook.xlsx.Edits.fill;
import static fineweight.workbook.xlsx.Edits.n;
import static fineweight.workbook.xlsx.Edits.number;
import static fineweight.workbook.xlsx.Edits.remove;
import static fineweight.workbook.xlsx.Edits.row;
import static fineweight.workbook.xlsx.Edits.rows;
import static fineweight.workbook.xlsx.Edits.save;
import static fineweight.workbook.xlsx.Edits.text;
import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.CellLook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.ColumnPlace;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the owner wrote is there again after our columns were taken out, however he wrote it. */
class TakingOutTest {
  private static final WorkbookEdit OUT =
      remove(List.of(new ColumnPlace("Coins", 0, 2)), List.of(), List.of());

  @TempDir Path folder;

  private Path file(String sheet) throws IOException {
    return new RawWorkbook().sheet("Coins", sheet).write(folder.resolve("coins.xlsx"));
  }

  private static WorkbookEdit in() {
    return fill(
        "Coins",
        4,
        column(2, "Metal", CellLook.GENERAL, 20, text("a"), number("2"), number("3"), number("4")));
  }

  private String there(String rows) throws Exception {
    Path file = file(rows);
    save(file, in());
    return RawWorkbook.sheetOne(file);
  }

  private String thereAndBack(String rows) throws Exception {
    Path file = file(rows);
    save(file, in());
    save(file, OUT);
    assertThat(save(file, OUT).written()).isFalse();
    return RawWorkbook.sheetOne(file).replaceAll("(?s).*(<sheetData.*</sheetData>).*", "$1");
  }

  @Test
  void keepsEmptyRowsThatOthersAreCountedFrom() throws Exception {
    String first = "<row><c><v>1</v></c></row>";
    assertThat(thereAndBack("<sheetData>" + first + "<row/><row/>" + first + "</sheetData>"))
        .isEqualTo("<sheetData>" + first + "<row></row><row></row>" + first + "</sheetData>");
  }

  @Test
  void keepsANumberedRowBeforeOneThatIsCounted() throws Exception {
    String counted = "<row><c><v>1</v></c></row>";
    assertThat(thereAndBack("<sheetData><row r=\"2\"/>" + counted + "</sheetData>"))
        .isEqualTo("<sheetData><row r=\"2\"></row>" + counted + "</sheetData>");
    assertThat(thereAndBack(rows("<row r=\"2\"/>", row(3, n("A3", "1")))))
        .isEqualTo(rows(row(3, n("A3", "1"))));
  }

  @Test
  void keepsWhatStandsInAnEmptyRow() throws Exception {
    String noted = rows("<row r=\"2\"><!-- mine --></row>", "<row r=\"3\"><?mine too?></row>");
    assertThat(thereAndBack(noted)).isEqualTo(noted);
    assertThat(thereAndBack(rows("<row r='2' ht=\"20\"/>", "<row r=\"3\" ht = '7' ></row>")))
        .isEqualTo(rows("<row r='2' ht=\"20\"></row>", "<row r=\"3\" ht = '7' ></row>"));
  }

  @Test
  void fillsAnEmptyRowWhateverFollows() throws Exception {
    assertThat(
            there("<sheetData><row r=\"1\" ht=\"20\"/>\n <row r=\"2\"/> <!-- x --> </sheetData>"))
        .contains(
            "<row r=\"1\" ht=\"20\"><c r=\"C1\" t=\"inlineStr\"><is><t>Metal</t></is></c></row>\n ",
            "<row r=\"2\"><c r=\"C2\" t=\"inlineStr\"><is><t>a</t></is></c></row> <!-- x --> ");
  }

  @Test
  void leavesTheOwnersWidthsAlone() throws Exception {
    String rows = rows(row(1, n("A1", "1")));
    for (String list :
        List.of(
            "<cols><col min=\"1\" max=\"1025\" width=\"8\"/></cols>",
            "<cols><!-- a --><col min=\"3\" max=\"3\" width=\"20.0\" customWidth=\"1\"/></cols>",
            "<cols><col min=\"2\" max=\"2\" width=\"8\"/> <col min=\"9\" max=\"9\""
                + " width=\"8\"/></cols>")) {
      Path file = file(list + rows);
      String before = RawWorkbook.sheetOne(file);
      save(file, in());
      save(file, OUT);
      assertThat(RawWorkbook.sheetOne(file)).isEqualTo(before);
    }
  }
}
