package fineweight.workbook.xlsx;

import static fineweight.workbook.xlsx.Edits.n;
import static fineweight.workbook.xlsx.Edits.row;
import static fineweight.workbook.xlsx.Edits.rows;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.Cell;
import fineweight.workbook.CellValue;
import fineweight.workbook.FileFormat;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.Workbook.UsedArea;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingTest {
  private static final String FORMATS =
      "<xf/><xf numFmtId=\"14\"/><xf numFmtId=\"170\"/><xf numFmtId=\"171\"/><xf numFmtId=\"2\"/>";
  private static final String CODES =
      "<numFmts count=\"2\"><numFmt numFmtId=\"170\" formatCode=\"yyyy\"/>"
          + "<numFmt numFmtId=\"171\" formatCode=\"[Red]0.0&quot; days&quot;\"/></numFmts>";

  @TempDir Path folder;

  private List<Cell> cells(RawWorkbook raw) throws IOException, WorkbookRefusal {
    List<Cell> all = new ArrayList<>();
    try (XlsxWorkbook workbook = open(raw)) {
      workbook.read("Coins", c -> true, Integer.MAX_VALUE, all::addAll);
    }
    return all;
  }

  private XlsxWorkbook open(RawWorkbook raw) throws IOException, WorkbookRefusal {
    return XlsxWorkbook.open(raw.write(folder.resolve("coins.xlsx")), new PlainReplacement());
  }

  private List<String> words(RawWorkbook raw) throws IOException, WorkbookRefusal {
    return cells(raw).stream().map(c -> c.place() + " " + words(c)).toList();
  }

  private static String words(Cell cell) {
    return cell.value() + cell.formula().map(f -> " =" + f).orElse("");
  }

  @Test
  void knowsEveryTypeOfCell() throws Exception {
    RawWorkbook raw =
        new RawWorkbook()
            .texts(
                "<t>plain</t>",
                "<r><t>half </t></r><r><rPr><b/></rPr><t>dollar</t></r>"
                    + "<rPh sb=\"0\" eb=\"1\"><t>phonetic</t></rPh>")
            .sheet(
                "Coins",
                rows(
                    row(1, "<c r=\"A1\" t=\"s\"><v>0</v></c>", "<c r=\"B1\" t=\"s\"><v>1</v></c>"),
                    row(
                        2,
                        "<c r=\"A2\" t=\"inlineStr\"><is><t>in_x000A_line</t></is></c>",
                        "<c r=\"B2\" t=\"str\"><f>A1&amp;\"x\"</f><v>plainx</v></c>",
                        "<c r=\"C2\" t=\"b\"><v>1</v></c>",
                        "<c r=\"D2\" t=\"e\"><v>#VALUE!</v></c>",
                        "<c r=\"E2\" t=\"d\"><v>1921-05-06T00:00:00</v></c>",
                        n("F2", "0.90000000000000002"),
                        "<c r=\"G2\" s=\"0\"/>",
                        "<c r=\"H2\" t=\"inlineStr\"><is><t></t></is></c>")));
    assertThat(words(raw))
        .containsExactly(
            "Coins!A1 Text[value=plain]",
            "Coins!B1 Text[value=half dollar]",
            "Coins!A2 Text[value=in\nline]",
            "Coins!B2 Text[value=plainx] =A1&\"x\"",
            "Coins!C2 Bool[value=true]",
            "Coins!D2 Error[code=#VALUE!]",
            "Coins!E2 Date[value=1921-05-06T00:00, yearOnly=false]",
            "Coins!F2 Number[value=0.90000000000000002]");
  }

  /**
   * 44197 is 1 January 2021 and 60 the day that never was, as every office counts (from memory).
   */
  @Test
  void readsDatesByTheirFormat() throws Exception {
    RawWorkbook raw =
        new RawWorkbook()
            .styles(CODES, FORMATS)
            .sheet(
                "Coins",
                rows(
                    row(
                        1,
                        "<c r=\"A1\" s=\"1\"><v>44197.5</v></c>",
                        "<c r=\"B1\" s=\"2\"><v>44197</v></c>",
                        "<c r=\"C1\" s=\"3\"><v>44197</v></c>",
                        "<c r=\"D1\" s=\"4\"><v>1.5</v></c>",
                        "<c r=\"E1\" s=\"1\"><v>1</v></c>",
                        "<c r=\"F1\" s=\"1\"><v>61</v></c>")));
    assertThat(cells(raw).stream().map(Cell::value))
        .containsExactly(
            new CellValue.Date(LocalDateTime.of(2021, 1, 1, 12, 0), false),
            new CellValue.Date(LocalDateTime.of(2021, 1, 1, 0, 0), true),
            new CellValue.Number(new BigDecimal("44197")),
            new CellValue.Number(new BigDecimal("1.5")),
            new CellValue.Date(LocalDateTime.of(1900, 1, 1, 0, 0), false),
            new CellValue.Date(LocalDateTime.of(1900, 3, 1, 0, 0), false));
  }

  @Test
  void countsFrom1904WhereTheWorkbookDoes() throws Exception {
    RawWorkbook raw =
        new RawWorkbook()
            .before("<workbookPr date1904=\"true\"/>")
            .styles(CODES, FORMATS)
            .sheet("Coins", rows(row(1, "<c r=\"A1\" s=\"1\"><v>1</v></c>")));
    assertThat(cells(raw).get(0).value())
        .isEqualTo(new CellValue.Date(LocalDateTime.of(1904, 1, 2, 0, 0), false));
  }

  @Test
  void countsOnWhereReferencesAreMissing() throws Exception {
    RawWorkbook raw =
        new RawWorkbook()
            .sheet(
                "Coins",
                "<sheetData><row><c><v>1</v></c><c><v>2</v></c></row><row r=\"4\"><c r=\"C4\">"
                    + "<v>3</v></c><c><v>4</v></c></row><row><c><v>5</v></c></row></sheetData>");
    assertThat(cells(raw).stream().map(c -> c.place().toString()))
        .containsExactly("Coins!A1", "Coins!B1", "Coins!C4", "Coins!D4", "Coins!A5");
  }

  @Test
  void stopsAfterTheLastRowAndBuildsWantedColumnsOnly() throws Exception {
    RawWorkbook raw =
        new RawWorkbook()
            .sheet(
                "Coins",
                rows(
                    row(1, n("A1", "1"), n("B1", "2")),
                    row(2, n("A2", "3"), n("B2", "4")),
                    row(5, n("A5", "5"), n("B5", "6"))));
    List<String> places = new ArrayList<>();
    try (XlsxWorkbook workbook = open(raw)) {
      workbook.read("Coins", c -> c == 1, 3, r -> r.forEach(c -> places.add("" + c.place())));
    }
    assertThat(places).containsExactly("Coins!B1", "Coins!B2");
  }

  @Test
  void readsOtherEncodings() throws Exception {
    String part =
        "<?xml version=\"1.0\" encoding=\"%s\"?><worksheet xmlns=\""
            + RawWorkbook.MAIN
            + "\">"
            + "<sheetData><row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>5 Gr\u00fcn</t></is></c>"
            + "</row></sheetData></worksheet>";
    assertThat(
            words(
                new RawWorkbook()
                    .sheet(
                        "Coins", "\uFEFF" + part.formatted("UTF-16"), StandardCharsets.UTF_16BE)))
        .containsExactly("Coins!A1 Text[value=5 Gr\u00fcn]");
    assertThat(
            words(
                new RawWorkbook()
                    .sheet("Coins", part.formatted("ISO-8859-1"), StandardCharsets.ISO_8859_1)))
        .containsExactly("Coins!A1 Text[value=5 Gr\u00fcn]");
    assertThat(
            words(
                new RawWorkbook()
                    .sheet("Coins", "\uFEFF" + part.formatted("utf-8"), StandardCharsets.UTF_8)))
        .containsExactly("Coins!A1 Text[value=5 Gr\u00fcn]");
  }

  @Test
  void tellsLayoutAndUsedArea() throws Exception {
    RawWorkbook raw =
        new RawWorkbook()
            .part(
                "xl/tables/table1.xml",
                "<table xmlns=\""
                    + RawWorkbook.MAIN
                    + "\" id=\"1\" name=\"T\" displayName=\"Mine\""
                    + " ref=\"A2:B4\" totalsRowCount=\"1\"><tableColumns count=\"2\"><tableColumn"
                    + " id=\"1\" name=\"a\"/><tableColumn id=\"2\" name=\"b\"/></tableColumns></table>")
            .part(
                "xl/worksheets/_rels/sheet1.xml.rels",
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                    + "<Relationship Id=\"rId1\" Type=\""
                    + RawWorkbook.RELATIONS
                    + "/table\" Target=\"/xl/tables/table1.xml\"/></Relationships>")
            .sheet(
                "Coins",
                rows(row(2, n("A2", "1"), "<c r=\"C2\" s=\"0\"/>"), row(9, n("B9", "1")))
                    + "<sheetProtection sheet=\"1\"/>"
                    + "<mergeCells count=\"1\"><mergeCell ref=\"A1:C1\"/></mergeCells>"
                    + "<tableParts count=\"1\"><tablePart r:id=\"rId1\"/></tableParts>");
    try (XlsxWorkbook workbook = open(raw)) {
      assertThat(workbook.format()).isEqualTo(FileFormat.XLSX);
      assertThat(workbook.usedArea("coins")).isEqualTo(new UsedArea(8, 2));
      assertThat(workbook.sheets().get(0).isProtected()).isTrue();
      SheetLayout layout = workbook.layout("Coins");
      assertThat(layout.merged()).containsExactly(new SheetLayout.Area(0, 0, 0, 2));
      assertThat(layout.tables())
          .containsExactly(new SheetLayout.Table("Mine", new SheetLayout.Area(1, 0, 3, 1), 1, 1));
    }
  }

  @Test
  void refusesWhatDoesNotHoldTogether() {
    assertRefused(rows(row(1, n("A1", "1")), row(1, n("A1", "1"))), "occurs twice");
    assertRefused(rows(row(1, n("B1", "1"), n("A1", "1"))), "cell Coins!A1 occurs twice");
    assertRefused(rows(row(1, "<c r=\"A1\" t=\"s\"><v>0</v></c>")), "points to text 0");
    assertRefused(rows(row(1, "<c r=\"A1\" s=\"1\"><v>0</v></c>")), "format number 1");
    assertRefused(rows(row(1, n("A2", "1"))), "has cell A2 in row 1");
    assertRefused(rows(row(1, n("XFE1", "1"))), "XFE1, which no sheet has");
    assertRefused("<sheetData>", "not valid XML");
  }

  private void assertRefused(String sheet, String words) {
    assertThatThrownBy(() -> open(new RawWorkbook().sheet("Coins", sheet)).close())
        .isInstanceOf(WorkbookRefusal.class)
        .hasMessageContaining(words)
        .hasMessageContaining("coins.xlsx");
  }

  @Test
  void letsTheCallersOwnFailureThrough() throws Exception {
    try (XlsxWorkbook workbook =
        open(new RawWorkbook().sheet("Coins", rows(row(1, n("A1", "1")))))) {
      assertThatThrownBy(
              () ->
                  workbook.read(
                      "Coins",
                      c -> true,
                      9,
                      r -> {
                        throw new IllegalStateException("mine");
                      }))
          .isInstanceOf(IllegalStateException.class)
          .hasMessage("mine");
    }
  }
}
