package fineweight.workbook.oracle;

import static fineweight.workbook.oracle.SampleBook.COINS;
import static fineweight.workbook.oracle.SampleBook.LOTS;
import static fineweight.workbook.oracle.SampleBook.change;
import static fineweight.workbook.oracle.SampleBook.zip;
import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.oracle.parts.RawZip;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The oracle lets a clean edit pass and catches every writer that was broken on purpose. */
class OracleTest {
  private static final String BOOK = "xl/workbook.xml";
  private static final String STYLES = "xl/styles.xml";
  private static final String STRINGS = "xl/sharedStrings.xml";

  @Test
  void anUntouchedCopyPasses() throws IOException {
    byte[] before = zip(SampleBook.before());
    assertThat(Oracle.findings(before, before.clone(), Expected.untouched())).isEmpty();
  }

  @Test
  void aCleanEditPasses() throws IOException {
    assertThat(findings(SampleBook.after())).isEmpty();
  }

  @Test
  void theSameEditIsCaughtWhereNoneWasAllowed() throws IOException {
    assertThat(
            Oracle.findings(
                zip(SampleBook.before()), zip(SampleBook.after()), Expected.untouched()))
        .isNotEmpty();
  }

  @Test
  void everyAllowedDifferenceHasItsReason() {
    assertThat(AllowedDifference.values()).allSatisfy(e -> assertThat(e.reason()).isNotBlank());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("brokenWriters")
  void catches(String name, Consumer<Map<String, String>> broken) throws IOException {
    Map<String, String> parts = SampleBook.after();
    broken.accept(parts);
    assertThat(findings(parts)).as(name).isNotEmpty();
  }

  static Stream<Arguments> brokenWriters() {
    return Stream.of(
        broken("chart dropped", parts -> parts.remove("xl/charts/chart1.xml")),
        broken("chart title changed", edit("xl/charts/chart1.xml", "Melt", "Melted")),
        broken("number rounded", edit(COINS, "9.0500000000000007", "9.05")),
        broken("stored result altered", edit(COINS, "18.100000000000001", "18.2")),
        broken("stored result of an independent formula dropped", edit(COINS, "<v>12.5</v>", "")),
        broken("stale result kept", edit(LOTS, "<f>SUM(Coins!E2:E4)</f>", "$0<v>0</v>")),
        broken("stale result in the same sheet kept", edit(COINS, "<f>E3+1</f>", "$0<v>1</v>")),
        broken("zero as a stand-in", edit(COINS, "<f>E3+1</f>", "$0<v>0</v>")),
        broken("formula altered", edit(COINS, "<f>C2*2</f>", "<f>C2*3</f>")),
        broken("rows swapped", OracleTest::swapRows),
        broken("cells swapped in a row", OracleTest::swapCells),
        broken("row height lost", edit(COINS, " ht=\"20\"", "")),
        broken("outer blanks lost", edit(COINS, " n.d. ", "n.d.")),
        broken("line break in a prompt lost", edit(COINS, "digits&#10;as", "digits as")),
        broken("validation moved", edit(COINS, "sqref=\"A2:A4\"", "sqref=\"A2:A5\"")),
        broken("conditional format lost", OracleTest::dropConditionalFormat),
        broken("style index shifted", edit(COINS, "<c r=\"C2\" s=\"1\">", "<c r=\"C2\" s=\"2\">")),
        broken("styled empty cell lost", edit(COINS, "<c r=\"C4\" s=\"2\"/>", "")),
        broken("column width changed", edit(COINS, "width=\"9.5\"", "width=\"9\"")),
        broken(
            "width of another column added",
            edit(COINS, "min=\"5\" max=\"5\"", "min=\"6\" max=\"6\"")),
        broken("pane lost", edit(COINS, "state=\"frozen\"", "state=\"split\"")),
        broken(
            "number became text",
            edit(COINS, "<c r=\"A2\"><v>1942", "<c r=\"A2\" t=\"str\"><v>1942")),
        broken(
            "cell outside the list written",
            edit(COINS, "<c r=\"H3\">", "<c r=\"G3\"><v>1</v></c>$0")),
        broken("cell of ours beyond the last row", edit(COINS, "</sheetData>", row5() + "$0")),
        broken("listed cell not written", edit(COINS, "<c r=\"E4\" t=\"s\"><v>6</v></c>", "")),
        broken("shared string changed", edit(STRINGS, "00123", "123")),
        broken(
            "shared string put in front",
            edit(STRINGS, "<si><t>Year", "<si><t>x</t></si><si><t>Year")),
        broken("rich text flattened", OracleTest::flatten),
        broken("format code changed", edit(STYLES, "formatCode=\"0.00\"", "formatCode=\"0.0\"")),
        broken("style put in front", edit(STYLES, "<xf numFmtId=\"0\"", "<xf numFmtId=\"9\"/>$0")),
        broken("font changed", edit(STYLES, "val=\"11\"", "val=\"10\"")),
        broken(
            "defined name lost",
            edit(BOOK, "<definedName name=\"spot\">Lots!$B$2</definedName>", "")),
        broken("defined name changed", edit(BOOK, "Lots!$B$2", "Lots!$B$3")),
        broken(
            "foreign name added",
            edit(BOOK, "</definedNames>", "<definedName name=\"x\">1</definedName>$0")),
        broken(
            "engine number of the last calculation changed",
            edit(BOOK, "calcId=\"1\"", "calcId=\"2\"")),
        broken("hidden sheet shown", edit(BOOK, " state=\"veryHidden\"", "")),
        broken("sheet renamed", edit(BOOK, "name=\"Lots\"", "name=\"Lot\"")),
        broken("sheet id changed", edit(BOOK, "sheetId=\"4\"", "sheetId=\"2\"")),
        broken("sheet order swapped", OracleTest::swapSheets),
        broken("active tab changed", edit(BOOK, "activeTab=\"1\"", "activeTab=\"0\"")),
        broken(
            "foreign sheet added",
            edit(BOOK, "</sheets>", "<sheet name=\"n\" sheetId=\"9\" r:id=\"rId3\"/>$0")),
        broken("comment changed", edit("xl/comments1.xml", "1931", "1932")),
        broken("merge lost", OracleTest::dropMerge),
        broken(
            "table grown over foreign cells",
            edit(
                "xl/tables/table1.xml",
                "displayName=\"T\" ref=\"A1:B2\"",
                "displayName=\"T\" ref=\"A1:C2\"")),
        broken(
            "table column renamed",
            edit("xl/tables/table1.xml", "name=\"Double\"", "name=\"Twice\"")),
        broken(
            "relationship lost",
            edit("xl/worksheets/_rels/sheet2.xml.rels", "<Relationship ", "<Gone ")),
        broken("content type lost", OracleTest::dropContentType),
        broken("foreign part added", parts -> parts.put("xl/extra.xml", "<x/>")),
        broken(
            "number in the untouched sheet",
            edit("xl/worksheets/sheet3.xml", "<v>7</v>", "<v>7.0</v>")),
        broken(
            "untouched sheet written anew",
            edit("xl/worksheets/sheet3.xml", "<v>7</v>", "<v >7</v>")),
        broken("parts in another order", OracleTest::reorder));
  }

  @Test
  void anUntouchedPartPackedAnewIsCaught() throws IOException {
    byte[] before = zip(SampleBook.before());
    byte[] packedAnew = zip(SampleBook.before());
    // The DOS time in the directory entry of the last part.
    RawZip sound = RawZip.of(packedAnew);
    assertThat(sound.entries()).isNotEmpty();
    int directory = lastIndexOf(packedAnew, new byte[] {0x50, 0x4b, 1, 2});
    packedAnew[directory + 12]++;
    assertThat(Oracle.findings(before, packedAnew, Expected.untouched())).isNotEmpty();
  }

  private static int lastIndexOf(byte[] bytes, byte[] wanted) {
    for (int i = bytes.length - wanted.length; i >= 0; i--) {
      if (java.util.Arrays.equals(bytes, i, i + wanted.length, wanted, 0, wanted.length)) {
        return i;
      }
    }
    throw new IllegalArgumentException("not found");
  }

  private static List<String> findings(Map<String, String> after) throws IOException {
    try {
      return Oracle.findings(zip(SampleBook.before()), zip(after), SampleBook.expected());
    } catch (IOException e) {
      return List.of(e.getMessage());
    }
  }

  private static Arguments broken(String name, Consumer<Map<String, String>> writer) {
    return Arguments.of(name, writer);
  }

  private static Consumer<Map<String, String>> edit(String part, String old, String now) {
    return parts -> change(parts, part, old, now);
  }

  private static String row5() {
    return "<row r=\"5\"><c r=\"E5\"><v>1</v></c></row>";
  }

  private static void swap(Map<String, String> parts, String part, String first, String second) {
    change(parts, part, first + second, second + first);
  }

  private static void swapRows(Map<String, String> parts) {
    String sheet = parts.get(COINS);
    int two = sheet.indexOf("<row r=\"2\"");
    int three = sheet.indexOf("<row r=\"3\"");
    int four = sheet.indexOf("<row r=\"4\"");
    swap(parts, COINS, sheet.substring(two, three), sheet.substring(three, four));
  }

  private static void swapCells(Map<String, String> parts) {
    swap(parts, COINS, "<c r=\"A1\" t=\"s\"><v>0</v></c>", "<c r=\"B1\" t=\"s\"><v>1</v></c>");
  }

  private static void swapSheets(Map<String, String> parts) {
    swap(
        parts,
        BOOK,
        "<sheet name=\"Coins\" sheetId=\"1\" r:id=\"rId1\"/>",
        "<sheet name=\"Lots\" sheetId=\"4\" r:id=\"rId2\"/>");
  }

  private static void dropConditionalFormat(Map<String, String> parts) {
    cut(parts, COINS, "<conditionalFormatting", "</conditionalFormatting>");
  }

  private static void dropMerge(Map<String, String> parts) {
    cut(parts, LOTS, "<mergeCells", "</mergeCells>");
  }

  private static void dropContentType(Map<String, String> parts) {
    cut(parts, "[Content_Types].xml", "<Override PartName=\"/xl/tables/table1.xml\"", "/>");
  }

  private static void flatten(Map<String, String> parts) {
    cut(parts, STRINGS, "<r><t>Dou", "</t></r></si>");
    change(parts, STRINGS, "<si><t>00123", "<t>Double</t></si><si><t>00123");
  }

  private static void cut(Map<String, String> parts, String part, String from, String to) {
    String content = parts.get(part);
    int start = content.indexOf(from);
    int end = content.indexOf(to, start) + to.length();
    change(parts, part, content.substring(start, end), "");
  }

  private static void reorder(Map<String, String> parts) {
    List<Map.Entry<String, String>> all = new ArrayList<>(new LinkedHashMap<>(parts).entrySet());
    parts.clear();
    parts.put(all.get(1).getKey(), all.get(1).getValue());
    all.forEach(each -> parts.put(each.getKey(), each.getValue()));
  }
}
