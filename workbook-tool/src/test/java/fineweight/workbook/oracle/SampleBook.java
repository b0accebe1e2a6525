package fineweight.workbook.oracle;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.oracle.parts.Places;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * An invented workbook with a little of everything, and the same after an edit made by hand: column
 * E with a header, two figures and a text put in beside the list.
 */
public final class SampleBook {
  private static final String DRAWING =
      "<wsDr xmlns=\"http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing\"/>";
  private static final String CHART =
      "<chartSpace xmlns=\"http://schemas.openxmlformats.org/drawingml/2006/chart\""
          + " xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\"><chart><title><tx>"
          + "<rich><a:bodyPr/><a:p><a:r><a:t>Melt</a:t></a:r></a:p></rich></tx></title><plotArea>"
          + "<pieChart><ser><idx val=\"0\"/><order val=\"0\"/><val><numRef><f>Coins!$C$2:$C$4</f>"
          + "</numRef></val></ser></pieChart></plotArea></chart></chartSpace>";

  private static final String MAIN =
      "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\""
          + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"";
  private static final String TYPES =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.";
  private static final String RELATION =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";

  public static final String COINS = "xl/worksheets/sheet1.xml";
  public static final String LOTS = "xl/worksheets/sheet2.xml";

  private SampleBook() {}

  public static Map<String, String> before() {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("[Content_Types].xml", contentTypes());
    parts.put("_rels/.rels", relations("officeDocument", "xl/workbook.xml"));
    parts.put("xl/workbook.xml", workbook());
    parts.put(
        "xl/_rels/workbook.xml.rels",
        relations(
            "worksheet",
            "worksheets/sheet1.xml",
            "worksheet",
            "/xl/worksheets/sheet2.xml",
            "worksheet",
            "worksheets/sheet3.xml",
            "sharedStrings",
            "sharedStrings.xml",
            "styles",
            "styles.xml",
            "calcChain",
            "calcChain.xml"));
    parts.put(COINS, coins());
    parts.put(
        "xl/worksheets/_rels/sheet1.xml.rels",
        relations("drawing", "../drawings/drawing1.xml", "comments", "../comments1.xml"));
    parts.put(LOTS, lots());
    parts.put("xl/worksheets/_rels/sheet2.xml.rels", relations("table", "../tables/table1.xml"));
    parts.put("xl/worksheets/sheet3.xml", sheet("<row r=\"1\"><c r=\"A1\"><v>7</v></c></row>", ""));
    parts.put("xl/sharedStrings.xml", strings());
    parts.put("xl/styles.xml", styles());
    parts.put("xl/calcChain.xml", "<calcChain " + MAIN + "><c r=\"D2\" i=\"1\"/></calcChain>");
    parts.put("xl/tables/table1.xml", table());
    parts.put("xl/drawings/drawing1.xml", DRAWING);
    parts.put("xl/drawings/_rels/drawing1.xml.rels", relations("chart", "../charts/chart1.xml"));
    parts.put("xl/charts/chart1.xml", CHART);
    parts.put(
        "xl/comments1.xml",
        "<comments "
            + MAIN
            + "><comment ref=\"A2\"><text><t>dug up 1931</t></text></comment></comments>");
    return parts;
  }

  public static Map<String, String> after() {
    Map<String, String> parts = before();
    change(parts, COINS, "<dimension ref=\"A1:H4\"/>", "<dimension ref=\"A1:H5\"/>");
    change(parts, COINS, "<c r=\"D1\" t=\"s\"><v>3</v></c>", "$0<c r=\"E1\" t=\"s\"><v>5</v></c>");
    change(
        parts, COINS, "<v>18.100000000000001</v></c>", "$0<c r=\"E2\" s=\"3\"><v>0.7734</v></c>");
    change(
        parts,
        COINS,
        "<f>C3*2</f><v>12.5</v></c>",
        "$0<c r=\"E3\" s=\"3\"><v>0.0723400000001</v></c>");
    change(parts, COINS, "<c r=\"H3\"><f>E3+1</f><v>1</v></c>", "<c r=\"H3\"><f>E3+1</f></c>");
    change(parts, COINS, "<row r=\"4\" spans=\"1:4\">", "<row r=\"4\" spans=\"1:5\">");
    change(parts, COINS, "<c r=\"C4\" s=\"2\"/>", "$0<c r=\"E4\" t=\"s\"><v>6</v></c>");
    change(parts, COINS, "</cols>", "<col min=\"5\" max=\"5\" width=\"12\" customWidth=\"1\"/>$0");
    change(parts, LOTS, "<f>SUM(Coins!E2:E4)</f><v>0</v>", "<f>SUM(Coins!E2:E4)</f>");
    change(
        parts,
        "xl/sharedStrings.xml",
        "count=\"6\" uniqueCount=\"5\"",
        "count=\"8\" uniqueCount=\"7\"");
    change(
        parts,
        "xl/sharedStrings.xml",
        "</sst>",
        "<si><t>Fine oz</t></si><si><t>which metal?</t></si></sst>");
    change(parts, "xl/styles.xml", "<cellXfs count=\"3\">", "<cellXfs count=\"4\">");
    change(parts, "xl/styles.xml", "</cellXfs>", "<xf numFmtId=\"165\" fontId=\"0\"/></cellXfs>");
    change(parts, "xl/styles.xml", "<numFmts count=\"1\">", "<numFmts count=\"2\">");
    change(
        parts,
        "xl/styles.xml",
        "</numFmts>",
        "<numFmt numFmtId=\"165\" formatCode=\"0.0000\"/></numFmts>");
    change(
        parts,
        "xl/workbook.xml",
        "</definedNames>",
        "<definedName name=\"Fineweight_1\" hidden=\"1\">Coins!$E$1</definedName></definedNames>");
    change(
        parts,
        "xl/workbook.xml",
        "<calcPr calcId=\"1\"/>",
        "<calcPr calcId=\"1\" fullCalcOnLoad=\"1\"/>");
    parts.remove("xl/calcChain.xml");
    change(parts, "[Content_Types].xml", override("xl/calcChain.xml", "calcChain"), "");
    change(parts, "xl/_rels/workbook.xml.rels", relation(6, "calcChain", "calcChain.xml"), "");
    return parts;
  }

  /** What the hand-made edit was asked to do. */
  public static Expected expected() {
    ColumnEdit column =
        new ColumnEdit(4, "Fine oz", CellLook.number("0.0000"), 12, row -> CellContent.EMPTY);
    WorkbookEdit edit =
        new WorkbookEdit(
            List.of(new SheetEdit("Coins", 0, 1, 3, List.of(column))),
            List.of(),
            List.of(new NamedCell("Fineweight_1", "Coins!$E$1", true)),
            WorkbookEdit.Removal.NOTHING);
    List<CellChange> changes =
        java.util.stream.Stream.of("E1", "E2", "E3", "E4", "H3")
            .map(each -> new CellChange(Places.place("Coins", each), "", ""))
            .collect(java.util.stream.Collectors.toList());
    changes.add(new CellChange(Places.place("Lots", "C2"), "", ""));
    return Expected.of(edit, changes);
  }

  /** Replaces what must stand there exactly once; {@code $0} is the old text. */
  public static void change(Map<String, String> parts, String part, String old, String now) {
    String content = parts.get(part);
    int at = content == null ? -1 : content.indexOf(old);
    if (at < 0 || content.indexOf(old, at + 1) >= 0) {
      throw new IllegalArgumentException("not exactly once in " + part + ": " + old);
    }
    parts.put(part, content.replace(old, now.replace("$0", old)));
  }

  public static byte[] zip(Map<String, String> parts) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        ZipEntry entry = new ZipEntry(part.getKey());
        entry.setTime(1_000_000_000_000L);
        zip.putNextEntry(entry);
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return bytes.toByteArray();
  }

  private static String contentTypes() {
    return "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
        + "<Default Extension=\"rels\""
        + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
        + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>"
        + override("xl/workbook.xml", "sheet.main")
        + override(COINS, "worksheet")
        + override(LOTS, "worksheet")
        + override("xl/worksheets/sheet3.xml", "worksheet")
        + override("xl/sharedStrings.xml", "sharedStrings")
        + override("xl/styles.xml", "styles")
        + override("xl/calcChain.xml", "calcChain")
        + override("xl/tables/table1.xml", "table")
        + "</Types>";
  }

  private static String override(String part, String type) {
    return "<Override PartName=\"/%s\" ContentType=\"%s%s+xml\"/>".formatted(part, TYPES, type);
  }

  private static String relations(String... typesAndTargets) {
    StringBuilder all =
        new StringBuilder(
            "<Relationships"
                + " xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">");
    for (int i = 0; i < typesAndTargets.length; i += 2) {
      all.append(relation(i / 2 + 1, typesAndTargets[i], typesAndTargets[i + 1]));
    }
    return all.append("</Relationships>").toString();
  }

  private static String relation(int number, String type, String target) {
    return "<Relationship Id=\"rId%d\" Type=\"%s%s\" Target=\"%s\"/>"
        .formatted(number, RELATION, type, target);
  }

  private static String workbook() {
    return "<workbook "
        + MAIN
        + "><bookViews><workbookView activeTab=\"1\"/></bookViews><sheets>"
        + "<sheet name=\"Coins\" sheetId=\"1\" r:id=\"rId1\"/>"
        + "<sheet name=\"Lots\" sheetId=\"4\" r:id=\"rId2\"/>"
        + "<sheet name=\"Private\" sheetId=\"5\" state=\"veryHidden\" r:id=\"rId3\"/></sheets>"
        + "<definedNames><definedName name=\"spot\">Lots!$B$2</definedName>"
        + "<definedName name=\"costs\">Coins!$C$2:$C$4</definedName></definedNames>"
        + "<calcPr calcId=\"1\"/></workbook>";
  }

  private static String sheet(String rows, String rest) {
    return "<worksheet " + MAIN + "><sheetData>" + rows + "</sheetData>" + rest + "</worksheet>";
  }

  private static String coins() {
    return "<worksheet "
        + MAIN
        + "><dimension ref=\"A1:H4\"/><sheetViews><sheetView workbookViewId=\"0\">"
        + "<pane ySplit=\"1\" topLeftCell=\"A2\" state=\"frozen\"/></sheetView></sheetViews>"
        + "<cols><col min=\"1\" max=\"3\" width=\"9.5\" customWidth=\"1\"/></cols><sheetData>"
        + "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"B1\" t=\"s\"><v>1</v></c>"
        + "<c r=\"C1\" t=\"s\"><v>2</v></c><c r=\"D1\" t=\"s\"><v>3</v></c></row>"
        + "<row r=\"2\"><c r=\"A2\"><v>1942</v></c><c r=\"B2\" t=\"s\"><v>4</v></c>"
        + "<c r=\"C2\" s=\"1\"><v>9.0500000000000007</v></c>"
        + "<c r=\"D2\"><f>C2*2</f><v>18.100000000000001</v></c></row>"
        + "<row r=\"3\" ht=\"20\" customHeight=\"1\"><c r=\"A3\"><v>1964</v></c>"
        + "<c r=\"B3\" t=\"s\"><v>4</v></c><c r=\"C3\" s=\"1\"><v>6.25</v></c>"
        + "<c r=\"D3\"><f>C3*2</f><v>12.5</v></c><c r=\"H3\"><f>E3+1</f><v>1</v></c></row>"
        + "<row r=\"4\" spans=\"1:4\"><c r=\"A4\" t=\"inlineStr\"><is><t xml:space=\"preserve\">"
        + " n.d. </t></is></c><c r=\"C4\" s=\"2\"/></row></sheetData>"
        + "<conditionalFormatting sqref=\"C2:C4\"><cfRule type=\"cellIs\" priority=\"1\""
        + " operator=\"lessThan\"><formula>5</formula></cfRule></conditionalFormatting>"
        + "<dataValidations count=\"1\"><dataValidation type=\"whole\" sqref=\"A2:A4\""
        + " promptTitle=\"Year\" prompt=\"four digits&#10;as struck\"><formula1>1</formula1>"
        + "</dataValidation></dataValidations><pageMargins left=\"0.7\" right=\"0.7\""
        + " top=\"1\" bottom=\"1\" header=\"0.5\" footer=\"0.5\"/>"
        + "<drawing r:id=\"rId1\"/></worksheet>";
  }

  private static String lots() {
    return sheet(
        "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>2</v></c><c r=\"B1\" t=\"s\"><v>3</v></c></row>"
            + "<row r=\"2\"><c r=\"A2\"><v>1</v></c><c r=\"B2\"><v>30</v></c>"
            + "<c r=\"C2\"><f>SUM(Coins!E2:E4)</f><v>0</v></c>"
            + "<c r=\"D2\"><f>SUM(costs)</f><v>15.3</v></c></row>",
        "<mergeCells count=\"1\"><mergeCell ref=\"F1:G1\"/></mergeCells>"
            + "<tableParts count=\"1\"><tablePart r:id=\"rId1\"/></tableParts>");
  }

  private static String strings() {
    return "<sst "
        + MAIN
        + " count=\"6\" uniqueCount=\"5\"><si><t>Year</t></si><si><t>Coin</t></si>"
        + "<si><t>Cost</t></si><si><r><t>Dou</t></r><r><rPr><b/></rPr><t>ble</t></r></si>"
        + "<si><t>00123</t></si></sst>";
  }

  private static String styles() {
    return "<styleSheet "
        + MAIN
        + "><numFmts count=\"1\"><numFmt numFmtId=\"164\" formatCode=\"0.00\"/></numFmts>"
        + "<fonts count=\"1\"><font><sz val=\"11\"/></font></fonts><cellXfs count=\"3\">"
        + "<xf numFmtId=\"0\" fontId=\"0\"/><xf numFmtId=\"164\" fontId=\"0\"/>"
        + "<xf numFmtId=\"14\" fontId=\"0\"/></cellXfs></styleSheet>";
  }

  private static String table() {
    return "<table "
        + MAIN
        + " id=\"1\" name=\"T\" displayName=\"T\" ref=\"A1:B2\"><autoFilter ref=\"A1:B2\"/>"
        + "<tableColumns count=\"2\"><tableColumn id=\"1\" name=\"Cost\"/>"
        + "<tableColumn id=\"2\" name=\"Double\"/></tableColumns></table>";
  }
}
