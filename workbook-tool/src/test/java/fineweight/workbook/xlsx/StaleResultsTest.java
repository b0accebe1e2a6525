package fineweight.workbook.xlsx;

import static fineweight.workbook.xlsx.Edits.column;
import static fineweight.workbook.xlsx.Edits.f;
import static fineweight.workbook.xlsx.Edits.fill;
import static fineweight.workbook.xlsx.Edits.n;
import static fineweight.workbook.xlsx.Edits.number;
import static fineweight.workbook.xlsx.Edits.preview;
import static fineweight.workbook.xlsx.Edits.row;
import static fineweight.workbook.xlsx.Edits.rows;
import static fineweight.workbook.xlsx.Edits.save;
import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.WorkbookEdit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StaleResultsTest {
  private static final WorkbookEdit EDIT =
      fill("Coins", 2, column(1, null, number("5"), number("6")));

  @TempDir Path folder;

  private List<String> stale(RawWorkbook raw) throws Exception {
    Path file = raw.write(folder.resolve("coins.xlsx"));
    List<String> lines = preview(file, EDIT);
    long changed = save(file, EDIT).changedCells();
    assertThat(changed).isEqualTo(lines.size());
    assertThat(save(file, EDIT).written()).isFalse();
    return lines.stream()
        .filter(l -> l.endsWith("(recalculated when opened)"))
        .map(l -> l.substring(0, l.indexOf(':')))
        .toList();
  }

  private static RawWorkbook coins(String... more) {
    String[] all = new String[more.length + 3];
    all[0] = row(1, n("A1", "1"), n("B1", "1"));
    all[1] = row(2, n("A2", "1"), n("B2", "1"));
    all[2] = row(3, n("A3", "1"), n("B3", "6"));
    System.arraycopy(more, 0, all, 3, more.length);
    return new RawWorkbook().sheet("Coins", rows(all));
  }

  @Test
  void dropsExactlyWhatDependsOnAChangedCell() throws Exception {
    assertThat(
            stale(
                coins(
                    row(
                        5,
                        f("A5", "SUM(B1:B2)", "2"),
                        f("B5", "B3+B1", "7"),
                        f("C5", "A5*2", "4"),
                        f("D5", "\"B2\"&amp;LOG10(A1)", "x"),
                        f("E5", "SUM($B:$B)", "8"),
                        f("F5", "SUM(2:2)", "8"),
                        f("G5", "Coins!B2", "1"),
                        f("H5", "Other!B2", "1")))))
        .containsExactly("Coins!A5", "Coins!C5", "Coins!E5", "Coins!F5", "Coins!G5");
  }

  @Test
  void followsOtherSheetsNamesAndBackwardChains() throws Exception {
    RawWorkbook raw =
        coins(row(4, f("A4", "'My sum'!A3", "1")))
            .sheet(
                "My sum",
                rows(
                    row(1, f("A1", "A2", "1")),
                    row(2, f("A2", "Total", "1")),
                    row(3, f("A3", "A1", "1"), f("B3", "Local", "1"), f("C3", "Else", "2"))))
            .names(
                "<definedNames><definedName name=\"Total\">Coins!$B$2:$B$3</definedName>"
                    + "<definedName name=\"Else\">Coins!$A$1</definedName>"
                    + "<definedName name=\"Local\" localSheetId=\"1\">Coins!$B$2</definedName>"
                    + "</definedNames>");
    assertThat(stale(raw))
        .containsExactlyInAnyOrder("Coins!A4", "My sum!A1", "My sum!A2", "My sum!A3", "My sum!B3");
  }

  @Test
  void followsSharedFormulasWhoseMembersMayComeFirst() throws Exception {
    RawWorkbook raw =
        coins(
            row(4, "<c r=\"D4\"><f t=\"shared\" si=\"1\"/><v>1</v></c>"),
            row(
                5,
                "<c r=\"C5\"><f t=\"shared\" si=\"0\" ref=\"C5:D5\">A2</f><v>1</v></c>",
                "<c r=\"D5\"><f t=\"shared\" si=\"0\"/><v>1</v></c>",
                "<c r=\"E5\"><f t=\"shared\" si=\"1\" ref=\"D4:E5\">C3</f><v>1</v></c>"));
    // D5 is the second of C5's: B2. D4 is one up and one left of E5's C3: B2.
    assertThat(stale(raw)).containsExactly("Coins!D4", "Coins!D5");
  }

  @Test
  void takesOutTheWholeResultOfAnArray() throws Exception {
    Path file =
        coins(
                row(
                    5,
                    "<c r=\"C5\" t=\"str\"><f t=\"array\" ref=\"C5:D5\">B1:B2</f><v>x</v></c>",
                    "<c r=\"D5\" t=\"str\"><v>y</v></c>"))
            .write(folder.resolve("a.xlsx"));
    assertThat(preview(file, EDIT))
        .endsWith(
            "Coins!C5: =B1:B2 (x) -> (recalculated when opened)",
            "Coins!D5: y -> (recalculated when opened)");
    save(file, EDIT);
    assertThat(RawWorkbook.sheetOne(file))
        .contains("<c r=\"C5\"><f t=\"array\" ref=\"C5:D5\">B1:B2</f></c>", "<c r=\"D5\"></c>");
  }

  @Test
  void followsTables() throws Exception {
    RawWorkbook raw = tableWorkbook();
    assertThat(stale(raw))
        .containsExactly("Coins!C9", "Coins!D9", "Coins!F9", "Coins!E12", "Coins!G12");
  }

  /** A table of its own in C8:E12 whose first cell depends on ours. */
  private static RawWorkbook tableWorkbook() throws IOException {
    return new RawWorkbook()
        .part(
            "xl/tables/table1.xml",
            "<table xmlns=\""
                + RawWorkbook.MAIN
                + "\" id=\"1\" name=\"T\" displayName=\"T\""
                + " ref=\"C8:E12\" totalsRowCount=\"1\"><tableColumns count=\"3\"><tableColumn"
                + " id=\"1\" name=\"one\"/><tableColumn id=\"2\" name=\"#two\"/><tableColumn"
                + " id=\"3\" name=\"three\"/></tableColumns></table>")
        .part(
            "xl/worksheets/_rels/sheet1.xml.rels",
            "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                + "<Relationship Id=\"rId1\" Type=\""
                + RawWorkbook.RELATIONS
                + "/table\" Target=\"/xl/tables/table1.xml\"/></Relationships>")
        .sheet(
            "Coins",
            rows(
                    row(2, n("B2", "1")),
                    row(3, n("B3", "6")),
                    row(
                        9,
                        f("C9", "B2", "1"),
                        f("D9", "T[[#This Row],[one]]", "1"),
                        f("E9", "T[[#Totals],[one]]", "1"),
                        f("F9", "SUM(T['#two])", "1")),
                    row(10, f("D10", "T[[#This Row],[one]]", "1")),
                    row(
                        12,
                        f("E12", "SUM(T[[one]:[#two]])", "1".replace("1", "1")),
                        f("F12", "SUM(T[three])", "1"),
                        f("G12", "ROWS(T)", "1")))
                + "<tableParts count=\"1\"><tablePart r:id=\"rId1\"/></tableParts>");
  }
}
