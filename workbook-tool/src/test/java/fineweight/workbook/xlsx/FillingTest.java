package fineweight.workbook.xlsx;

import static fineweight.workbook.xlsx.Edits.column;
import static fineweight.workbook.xlsx.Edits.f;
import static fineweight.workbook.xlsx.Edits.fill;
import static fineweight.workbook.xlsx.Edits.n;
import static fineweight.workbook.xlsx.Edits.number;
import static fineweight.workbook.xlsx.Edits.preview;
import static fineweight.workbook.xlsx.Edits.remove;
import static fineweight.workbook.xlsx.Edits.row;
import static fineweight.workbook.xlsx.Edits.rows;
import static fineweight.workbook.xlsx.Edits.save;
import static fineweight.workbook.xlsx.Edits.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.ColumnPlace;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FillingTest {
  @TempDir Path folder;

  private Path file(RawWorkbook raw) throws IOException {
    return raw.write(folder.resolve("coins.xlsx"));
  }

  private Path file(String sheet) throws IOException {
    return file(new RawWorkbook().sheet("Coins", sheet));
  }

  private static String cells(Path file) throws IOException {
    return RawWorkbook.sheetOne(file).replaceAll("(?s).*(<sheetData.*</sheetData>).*", "$1");
  }

  @Test
  void putsCellsAtTheirPlaceAndCopiesTheRest() throws Exception {
    String odd = "<!-- odd --><row  r = '2'   ht=\"20\" ><c r=\"A2\" ><v>1</v ></c\n></row>";
    Path file =
        file(
            "<dimension ref=\"A1:A2\"/><sheetData>"
                + row(1, n("A1", "7")).replace("r=\"1\"", "r=\"1\" spans=\"1:1\"")
                + odd
                + "<row r=\"3\"/>"
                + row(5, n("A5", "2"))
                + "</sheetData><!-- tail -->");
    WorkbookEdit edit =
        fill(
            "Coins",
            6,
            column(
                2,
                "Metal",
                text("silver"),
                text(" <gold> & "),
                number("3.50"),
                CellContent.EMPTY,
                CellContent.Formula.number("A5*2", new BigDecimal("4.00")),
                CellContent.Formula.text("A6&\"\"", "x")));
    assertThat(preview(file, edit))
        .containsExactly(
            "Coins!C1:  -> Metal",
            "Coins!C2:  -> silver",
            "Coins!C3:  ->  <gold> & ",
            "Coins!C4:  -> 3.5",
            "Coins!C6:  -> =A5*2 (4)",
            "Coins!C7:  -> =A6&\"\" (x)");
    assertThat(save(file, edit).changedCells()).isEqualTo(6);
    assertThat(RawWorkbook.sheetOne(file))
        .contains("<dimension ref=\"A1:C7\"/>", "</sheetData><!-- tail -->");
    assertThat(cells(file))
        .isEqualTo(
            "<sheetData><row r=\"1\" spans=\"1:3\"><c r=\"A1\"><v>7</v></c>"
                + "<c r=\"C1\" t=\"inlineStr\"><is><t>Metal</t></is></c></row>"
                + "<!-- odd --><row  r = '2'   ht=\"20\" ><c r=\"A2\" ><v>1</v ></c\n>"
                + "<c r=\"C2\" t=\"inlineStr\"><is><t>silver</t></is></c></row>"
                + "<row r=\"3\"><c r=\"C3\" t=\"inlineStr\"><is>"
                + "<t xml:space=\"preserve\"> &lt;gold&gt; &amp; </t></is></c></row>"
                + "<row r=\"4\"><c r=\"C4\"><v>3.5</v></c></row>"
                + "<row r=\"5\"><c r=\"A5\"><v>2</v></c></row>"
                + "<row r=\"6\"><c r=\"C6\"><f>A5*2</f><v>4</v></c></row>"
                + "<row r=\"7\"><c r=\"C7\" t=\"str\"><f>A6&amp;\"\"</f><v>x</v></c></row>"
                + "</sheetData>");
    assertThat(RawWorkbook.read(file, "xl/workbook.xml"))
        .contains("</sheets><calcPr fullCalcOnLoad=\"1\"/>");
  }

  @Test
  void writesUnderTheSheetsOwnPrefix() throws Exception {
    String part = "<x:worksheet xmlns:x=\"" + RawWorkbook.MAIN + "\"><x:sheetData/></x:worksheet>";
    Path file =
        file(new RawWorkbook().sheet("Coins", part, java.nio.charset.StandardCharsets.UTF_8));
    save(file, fill("Coins", 1, column(0, "Metal", CellLook.GENERAL, 9, text("tin"))));
    assertThat(RawWorkbook.sheetOne(file))
        .contains(
            "<x:cols><x:col min=\"1\" max=\"1\" customWidth=\"1\" hidden=\"0\" width=\"9.0\"/></x:cols>"
                + "<x:sheetData><x:row r=\"1\"><x:c r=\"A1\" t=\"inlineStr\"><x:is><x:t>Metal"
                + "</x:t></x:is></x:c></x:row>");
  }

  @Test
  void replacesOurOwnColumnAndKeepsItsFormat() throws Exception {
    Path file =
        file(
            new RawWorkbook()
                .styles("", "<xf/><xf fontId=\"1\"/>")
                .sheet(
                    "Coins",
                    rows(
                        row(1, n("A1", "1"), "<c r=\"B1\" s=\"1\"><v>1</v></c>", n("C1", "9")),
                        row(2, "<c r=\"B2\" s=\"1\"><v>2.50</v></c>", n("C2", "9")))));
    WorkbookEdit edit = fill("Coins", 1, column(1, "B", number("2.5")));
    assertThat(preview(file, edit)).containsExactly("Coins!B1: 1 -> B");
    save(file, edit);
    assertThat(cells(file))
        .contains(
            "<c r=\"B1\" s=\"1\" t=\"inlineStr\"><is><t>B</t></is></c><c r=\"C1\">",
            "<c r=\"B2\" s=\"1\"><v>2.50</v></c>");
    byte[] once = Files.readAllBytes(file);
    assertThat(save(file, edit).written()).isFalse();
    assertThat(Files.readAllBytes(file)).isEqualTo(once);
    save(file, fill("Coins", 1, column(1, null, CellContent.EMPTY)));
    assertThat(cells(file)).contains("<c r=\"B2\" s=\"1\"/>");
  }

  @Test
  void takesTheLookFromTheNeighbour() throws Exception {
    Path file =
        file(
            new RawWorkbook()
                .styles("", "<xf/><xf fontId=\"1\" numFmtId=\"14\"/><xf numFmtId=\"2\"/>")
                .sheet(
                    "Coins",
                    "<cols><col min=\"3\" max=\"9\" width=\"8\" style=\"2\"/></cols>"
                        + rows(
                            row(1, "<c r=\"A1\" s=\"1\"><v>1</v></c>"),
                            row(2, "<c r=\"A2\" s=\"1\"><v>1</v></c>"))));
    CellLook ounces = new CellLook("0.0000", true);
    save(
        file,
        fill(
            "Coins",
            1,
            column(1, "Oz", ounces, 12, number("1")),
            column(3, "Kept", ounces, 7, number("1"))));
    assertThat(RawWorkbook.sheetOne(file))
        .contains(
            "<cols><col min=\"2\" max=\"2\" customWidth=\"1\" hidden=\"0\""
                + " width=\"12.0\"/><col min=\"3\" max=\"9\" width=\"8\" style=\"2\"/></cols>",
            "<c r=\"B1\" s=\"1\" t=\"inlineStr\">",
            "<c r=\"B2\" s=\"3\"><v>1</v></c>",
            "<c r=\"D2\" s=\"2\"><v>1</v></c>");
    assertThat(RawWorkbook.read(file, "xl/styles.xml"))
        .contains(
            "<numFmts count=\"1\"><numFmt numFmtId=\"164\" formatCode=\"0.0000\"/></numFmts><fonts",
            "<xf numFmtId=\"164\" fontId=\"1\" fillId=\"0\" borderId=\"0\" xfId=\"0\"",
            "<alignment vertical=\"top\" wrapText=\"1\"/></xf></cellXfs>",
            "<cellXfs count=\"4\">");
  }

  @Test
  void takingOutGivesTheSheetBack() throws Exception {
    String sheet =
        "<cols><col min=\"1\" max=\"5\" width=\"8\"/></cols>"
            + rows(row(1, n("A1", "1")), row(2, n("A2", "1")), row(9, n("A9", "1")));
    Path file = file(sheet);
    String before = RawWorkbook.sheetOne(file);
    save(
        file,
        fill(
            "Coins",
            4,
            column(2, "Metal", CellLook.GENERAL, 20, text("a"), text("b"), text("c"), text("d"))));
    assertThat(cells(file)).contains("<row r=\"5\"><c r=\"C5\"");
    WorkbookEdit out = remove(List.of(new ColumnPlace("Coins", 0, 2)), List.of(), List.of());
    assertThat(preview(file, out)).hasSize(5).contains("Coins!C5: d -> ");
    save(file, out);
    assertThat(RawWorkbook.sheetOne(file)).isEqualTo(before);
    assertThat(save(file, out).written()).isFalse();
  }

  @Test
  void onlyEmptiesAColumnWithForeignCellsToItsRight() throws Exception {
    Path file =
        file(
            "<cols><col min=\"2\" max=\"2\" width=\"8\" customWidth=\"1\"/></cols>"
                + rows(row(1, n("A1", "1"), n("B1", "2"), n("C1", "3"))));
    save(file, remove(List.of(new ColumnPlace("Coins", 0, 1)), List.of(), List.of()));
    assertThat(RawWorkbook.sheetOne(file))
        .contains(
            "<col min=\"2\" max=\"2\" width=\"8\" customWidth=\"1\"/>",
            "<row r=\"1\"><c r=\"A1\"><v>1</v></c><c r=\"C1\"><v>3</v></c></row>");
  }

  @Test
  void keepsAwayFromMergesSharedAndArrayFormulas() throws Exception {
    WorkbookEdit second = fill("Coins", 3, column(1, "B", number("1"), number("2"), number("3")));
    assertRefused(
        rows(row(1, n("A1", "1"))) + "<mergeCells><mergeCell ref=\"B2:C2\"/></mergeCells>",
        second,
        "merged");
    assertRefused(
        rows(
            row(
                2,
                "<c r=\"B2\"><f t=\"shared\" si=\"0\" ref=\"B2:C2\">A1</f><v>1</v></c>"
                    + "<c r=\"C2\"><f t=\"shared\" si=\"0\"/><v>1</v></c>")),
        second,
        "Coins!B2 belongs to a formula");
    assertRefused(
        rows(row(2, "<c r=\"A2\"><f t=\"array\" ref=\"A2:B3\">C1:D2</f><v>1</v></c>")),
        second,
        "Coins!B2 belongs to a formula");
  }

  private void assertRefused(String sheet, WorkbookEdit edit, String words) throws IOException {
    Path file = file(sheet);
    assertThatThrownBy(() -> preview(file, edit))
        .isInstanceOf(WorkbookRefusal.class)
        .hasMessageContaining(words);
    byte[] before = Files.readAllBytes(file);
    assertThatThrownBy(() -> save(file, edit)).isInstanceOf(WorkbookRefusal.class);
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void replacesASharedFormulaThatIsWhollyOurs() throws Exception {
    Path file =
        file(
            rows(
                row(1, n("A1", "1")),
                row(2, "<c r=\"B2\"><f t=\"shared\" si=\"0\" ref=\"B2:B3\">A1</f><v>1</v></c>"),
                row(3, "<c r=\"B3\"><f t=\"shared\" si=\"0\"/><v>1</v></c>")));
    save(file, fill("Coins", 2, column(1, "B", number("1"), number("2"))));
    assertThat(cells(file)).doesNotContain("<f").contains("<c r=\"B3\"><v>2</v></c>");
  }

  @Test
  void dropsTheCalculationChainWithItsTraces() throws Exception {
    RawWorkbook raw =
        new RawWorkbook()
            .sheet("Coins", rows(row(1, n("A1", "1")), row(2, f("B2", "A1", "1"))))
            .relation("calcChain", "calcChain.xml", "C")
            .type(
                "xl/calcChain.xml",
                "application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml")
            .part("xl/calcChain.xml", "<calcChain xmlns=\"" + RawWorkbook.MAIN + "\"/>");
    Path file = file(raw);
    save(file, fill("Coins", 1, column(1, "B", number("1"))));
    assertThat(RawWorkbook.read(file, "xl/calcChain.xml")).isNull();
    assertThat(RawWorkbook.read(file, "[Content_Types].xml")).doesNotContain("calcChain");
    assertThat(RawWorkbook.read(file, "xl/_rels/workbook.xml.rels")).doesNotContain("calcChain");
  }

  @Test
  void neverMakesAFormulaOfText() throws Exception {
    Path file = file(rows(row(1, n("A1", "1"))));
    save(file, fill("Coins", 1, column(1, "=1+1", text("=HYPERLINK(\"x\")\u0001_x0041_"))));
    assertThat(cells(file))
        .doesNotContain("<f>")
        .contains("<t>=1+1</t>", "<t>=HYPERLINK(\"x\")_x0001__x005F_x0041_</t>");
    try (XlsxWorkbook workbook = XlsxWorkbook.open(file, new PlainReplacement())) {
      workbook.read(
          "Coins",
          c -> c == 1,
          9,
          r ->
              assertThat(r.get(0).value().toString())
                  .isIn("Text[value==1+1]", "Text[value==HYPERLINK(\"x\")\u0001_x0041_]"));
    }
  }

  @Test
  void refusesSignedAndStrictWorkbooks() throws Exception {
    WorkbookEdit edit = fill("Coins", 1, column(1, "B", number("1")));
    Path signed =
        file(
            new RawWorkbook()
                .sheet("Coins", rows(row(1, n("A1", "1"))))
                .part("_xmlsignatures/sig1.xml", "<Signature/>"));
    assertThatThrownBy(() -> save(signed, edit))
        .isInstanceOfSatisfying(
            WorkbookRefusal.class,
            e -> assertThat(e.kind()).isEqualTo(WorkbookRefusal.Kind.PROTECTED));
  }
}
