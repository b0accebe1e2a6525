package fineweight.benchmark;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * An invented inventory: 15 columns of the owner's, one of them a formula, and six that a former
 * run filled. Same rows for the same number, whatever the machine.
 */
final class InventoryFile {
  static final String SHEET = "Inventory";
  static final String SHEET_PART = "xl/worksheets/sheet1.xml";
  static final int OWNER_COLUMNS = 15;
  static final int FORMER_COLUMNS = 6;

  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
  private static final String[] HEADERS = {
    "No",
    "Year",
    "Mint",
    "Coin",
    "Count",
    "Paid",
    "Lot",
    "Grade",
    "Mass g",
    "Bought",
    "Remark",
    "Place",
    "Paid in all",
    "From",
    "Own price",
    "Metal",
    "Fine oz",
    "Melt",
    "State",
    "Ground",
    "Note"
  };
  private static final String[] WORDS = {
    "half dollar",
    "quarter",
    "dime",
    "five cents",
    "florin",
    "crown",
    "shilling",
    "5 francs",
    "2 mark",
    "peso",
    "25 cents",
    "rupee",
    "worn",
    "fine",
    "very fine",
    "raw",
    "box 1",
    "box 2",
    "album",
    "safe",
    "fair",
    "estate",
    "silver",
    "valued",
    "several",
    "by type and date"
  };

  /** The same twelve columns as an office would fill them: each row looks its coin up in a list. */
  private static final String[] LOOK_UPS = {
    "VLOOKUP(D#,Standards!$A$1:$F$160,2,FALSE)",
    "VLOOKUP(D#,Standards!$A$1:$F$160,3,FALSE)*E#",
    "ROUND(Q#*Fineweight_XAG,2)",
    "IF(ISNA(MATCH(D#,Standards!$A$1:$A$160,0)),&quot;not known&quot;,&quot;valued&quot;)",
    "VLOOKUP(D#,Standards!$A$1:$F$160,4,FALSE)",
    "VLOOKUP(D#,Standards!$A$1:$F$160,5,FALSE)",
    "Q#*31.1034768",
    "VLOOKUP(D#,Standards!$A$1:$F$160,6,FALSE)*E#",
    "ROUND(W#*2000,2)",
    "R#/2",
    "IF(S#=&quot;valued&quot;,&quot;&quot;,&quot;which is it?&quot;)",
    "MAX(R#,E#)"
  };

  private final int rows;
  private final boolean lookUps;
  private final Random random = new Random(18_530_221);

  private InventoryFile(int rows, boolean lookUps) {
    this.rows = rows;
    this.lookUps = lookUps;
  }

  static Path write(Path file, int rows) throws IOException {
    return new InventoryFile(rows, false).write(file);
  }

  /** With look-up formulas, not calculated yet, in the columns that the other ways fill. */
  static Path writeWithLookUps(Path file, int rows) throws IOException {
    return new InventoryFile(rows, true).write(file);
  }

  private Path write(Path file) throws IOException {
    InventoryFile inventory = this;
    try (ZipOutputStream zip =
        new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(file), 1 << 16))) {
      Writer out = new OutputStreamWriter(zip, StandardCharsets.UTF_8);
      inventory.part(zip, out, "[Content_Types].xml", inventory.types());
      inventory.part(zip, out, "_rels/.rels", relations("officeDocument", "xl/workbook.xml"));
      inventory.part(zip, out, "xl/workbook.xml", inventory.workbook());
      inventory.part(
          zip,
          out,
          "xl/_rels/workbook.xml.rels",
          relations(
              "worksheet",
              "worksheets/sheet1.xml",
              "worksheet",
              "worksheets/sheet2.xml",
              "worksheet",
              "worksheets/sheet3.xml",
              "sharedStrings",
              "sharedStrings.xml",
              "styles",
              "styles.xml"));
      inventory.part(zip, out, "xl/styles.xml", inventory.styles());
      inventory.part(zip, out, "xl/worksheets/sheet2.xml", inventory.spotSheet());
      inventory.part(zip, out, "xl/worksheets/sheet3.xml", standards());
      zip.putNextEntry(new ZipEntry(SHEET_PART));
      inventory.sheet(out);
      out.flush();
      zip.putNextEntry(new ZipEntry("xl/sharedStrings.xml"));
      inventory.strings(out);
      out.flush();
    }
    return file;
  }

  private void part(ZipOutputStream zip, Writer out, String name, String content)
      throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    out.write("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n" + content);
    out.flush();
  }

  private String types() {
    StringBuilder all = new StringBuilder("<Types xmlns=\"");
    all.append("http://schemas.openxmlformats.org/package/2006/content-types\">")
        .append("<Default Extension=\"rels\" ContentType=\"")
        .append("application/vnd.openxmlformats-package.relationships+xml\"/>");
    String[] parts = {
      "workbook.xml", "sheet.main", "worksheets/sheet1.xml", "worksheet", "worksheets/sheet2.xml",
      "worksheet", "worksheets/sheet3.xml", "worksheet", "styles.xml", "styles",
      "sharedStrings.xml", "sharedStrings"
    };
    for (int i = 0; i < parts.length; i += 2) {
      all.append(
          "<Override PartName=\"/xl/%s\" ContentType=\"%s%s+xml\"/>"
              .formatted(parts[i], KIND, parts[i + 1]));
    }
    return all.append("</Types>").toString();
  }

  private static String relations(String... typesAndTargets) {
    StringBuilder all = new StringBuilder("<Relationships xmlns=\"");
    all.append("http://schemas.openxmlformats.org/package/2006/relationships\">");
    for (int i = 0; i < typesAndTargets.length; i += 2) {
      all.append(
          "<Relationship Id=\"rId%d\" Type=\"%s/%s\" Target=\"%s\"/>"
              .formatted(i / 2 + 1, RELATIONS, typesAndTargets[i], typesAndTargets[i + 1]));
    }
    return all.append("</Relationships>").toString();
  }

  private String workbook() {
    return "<workbook xmlns=\""
        + MAIN
        + "\" xmlns:r=\""
        + RELATIONS
        + "\"><sheets>"
        + "<sheet name=\"Inventory\" sheetId=\"1\" r:id=\"rId1\"/>"
        + "<sheet name=\"Spot\" sheetId=\"2\" r:id=\"rId2\"/>"
        + "<sheet name=\"Standards\" sheetId=\"3\" r:id=\"rId3\"/></sheets><definedNames>"
        + "<definedName name=\"Fineweight_XAG\">Spot!$B$1</definedName></definedNames>"
        + "<calcPr calcId=\"0\"/></workbook>";
  }

  private String styles() {
    return "<styleSheet xmlns=\""
        + MAIN
        + "\"><fonts count=\"1\"><font><sz val=\"11\"/>"
        + "<name val=\"Calibri\"/></font></fonts><fills count=\"2\"><fill><patternFill"
        + " patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill></fills>"
        + "<borders count=\"1\"><border/></borders><cellStyleXfs count=\"1\"><xf numFmtId=\"0\"/>"
        + "</cellStyleXfs><cellXfs count=\"4\"><xf numFmtId=\"0\"/><xf numFmtId=\"4\"/>"
        + "<xf numFmtId=\"14\"/><xf numFmtId=\"2\"/></cellXfs></styleSheet>";
  }

  private String spotSheet() {
    return "<worksheet xmlns=\""
        + MAIN
        + "\"><sheetData><row r=\"1\"><c r=\"A1\" t=\"inlineStr\">"
        + "<is><t>XAG per ozt, invented</t></is></c><c r=\"B1\"><v>30</v></c></row></sheetData>"
        + "</worksheet>";
  }

  /** A list of invented figures: the coins of the inventory among others. */
  private static String standards() {
    StringBuilder all = new StringBuilder("<worksheet xmlns=\"" + MAIN + "\"><sheetData>");
    for (int row = 1; row <= 160; row++) {
      String coin = row % 13 == 0 ? WORDS[row / 13 - 1] : "other coin " + row;
      all.append("<row r=\"" + row + "\">").append(words("A", row, coin));
      all.append(words("B", row, "silver"));
      all.append("<c r=\"C" + row + "\"><v>0." + (7000 + row) + "</v></c>");
      all.append(words("D", row, "by type and date")).append(words("E", row, "law of " + row));
      all.append("<c r=\"F" + row + "\"><v>0</v></c></row>");
    }
    return all.append("</sheetData></worksheet>").toString();
  }

  private static String words(String column, int row, String text) {
    return "<c r=\"%s%d\" t=\"inlineStr\"><is><t>%s</t></is></c>".formatted(column, row, text);
  }

  private void lookUps(Writer out, int row) throws IOException {
    for (int i = 0; i < LOOK_UPS.length; i++) {
      String column = i < 11 ? String.valueOf((char) ('P' + i)) : "AA";
      String formula = LOOK_UPS[i].replace("#", String.valueOf(row));
      out.write("<c r=\"" + column + row + "\"><f>" + formula + "</f></c>");
    }
  }

  private void sheet(Writer out) throws IOException {
    out.write("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n<worksheet xmlns=\"");
    out.write(MAIN + "\"><dimension ref=\"A1:U" + (rows + 1) + "\"/><sheetData><row r=\"1\">");
    for (int column = 0; column < HEADERS.length; column++) {
      text(out, column, 1, WORDS.length + column);
    }
    out.write("</row>");
    for (int row = 2; row <= rows + 1; row++) {
      out.write("<row r=\"" + row + "\" spans=\"1:" + (lookUps ? 27 : 21) + "\">");
      ownerCells(out, row);
      if (lookUps) {
        lookUps(out, row);
      } else {
        formerCells(out, row);
      }
      out.write("</row>");
    }
    out.write("</sheetData><conditionalFormatting sqref=\"F2:F" + (rows + 1) + "\"><cfRule");
    out.write(" type=\"cellIs\" priority=\"1\" operator=\"greaterThan\"><formula>500</formula>");
    out.write("</cfRule></conditionalFormatting></worksheet>");
  }

  private void ownerCells(Writer out, int row) throws IOException {
    number(out, 0, row, 0, String.valueOf(row - 1));
    number(out, 1, row, 0, String.valueOf(1850 + random.nextInt(150)));
    text(out, 2, row, random.nextInt(4) + 12);
    text(out, 3, row, random.nextInt(12));
    number(out, 4, row, 0, String.valueOf(1 + random.nextInt(20)));
    number(out, 5, row, 1, random.nextInt(400) + "." + random.nextInt(100));
    number(out, 6, row, 0, String.valueOf(row / 40));
    text(out, 7, row, 12 + random.nextInt(4));
    number(out, 8, row, 3, (2 + random.nextInt(30)) + "." + random.nextInt(100));
    number(out, 9, row, 2, String.valueOf(38000 + random.nextInt(7000)));
    if (row % 3 == 0) {
      text(out, 10, row, WORDS.length + HEADERS.length + row / 3 - 1);
    }
    text(out, 11, row, 16 + random.nextInt(4));
    out.write("<c r=\"M" + row + "\" s=\"1\"><f>E" + row + "*F" + row + "</f><v>100</v></c>");
    text(out, 13, row, 20 + random.nextInt(2));
    if (row % 10 == 0) {
      number(out, 14, row, 1, String.valueOf(random.nextInt(900)));
    }
  }

  private void formerCells(Writer out, int row) throws IOException {
    text(out, 15, row, 22);
    number(out, 16, row, 3, "0." + (10_000 + random.nextInt(80_000)));
    out.write("<c r=\"R" + row + "\" s=\"1\"><f>ROUND(Q" + row + "*Fineweight_XAG,2)</f>");
    out.write("<v>" + random.nextInt(60) + "</v></c>");
    text(out, 18, row, 23);
    text(out, 19, row, 25);
    text(out, 20, row, 24);
  }

  private static void number(Writer out, int column, int row, int style, String value)
      throws IOException {
    out.write(
        "<c r=\"" + (char) ('A' + column) + row + (style == 0 ? "\"" : "\" s=\"" + style + "\""));
    out.write("><v>" + value + "</v></c>");
  }

  private static void text(Writer out, int column, int row, int index) throws IOException {
    out.write("<c r=\"" + (char) ('A' + column) + row + "\" t=\"s\"><v>" + index + "</v></c>");
  }

  private void strings(Writer out) throws IOException {
    out.write("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n<sst xmlns=\"");
    out.write(MAIN + "\">");
    for (String word : WORDS) {
      out.write("<si><t>" + word + "</t></si>");
    }
    for (String header : HEADERS) {
      out.write("<si><t>" + header + "</t></si>");
    }
    for (int i = 1; i <= (rows + 1) / 3; i++) {
      out.write("<si><t>bought with others, bag " + i + ", edge knocked</t></si>");
    }
    out.write("</sst>");
  }
}
