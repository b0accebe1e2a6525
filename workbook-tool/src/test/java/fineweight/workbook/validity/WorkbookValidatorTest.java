package fineweight.workbook.validity;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.oracle.SampleBook;
import fineweight.workbook.oracle.parts.RawZip;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sound workbook passes, and every way of building it wrong is named. */
class WorkbookValidatorTest {
  private static final Map<String, String> PARTS =
      Map.of(
          "coins", SampleBook.COINS,
          "lots", SampleBook.LOTS,
          "book", "xl/workbook.xml",
          "styles", "xl/styles.xml",
          "texts", "xl/sharedStrings.xml",
          "table", "xl/tables/table1.xml",
          "notes", "xl/worksheets/_rels/sheet1.xml.rels",
          "types", "[Content_Types].xml",
          "links", "xl/_rels/workbook.xml.rels");

  @Test
  void theSampleIsSoundBeforeAndAfter() throws IOException {
    assertThat(findings(SampleBook.before())).isEmpty();
    assertThat(findings(SampleBook.after())).isEmpty();
  }

  @ParameterizedTest(name = "{0}: {1} -> {2}")
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '|',
      value = {
        "coins; s=\"1\"><v>6.25; s=\"3\"><v>6.25; no style 3",
        "coins; <c r=\"B2\" t=\"s\"><v>4; <c r=\"B2\" t=\"s\"><v>5; has no text 5",
        "coins; <c r=\"A3\">; <c r=\"C3\">; out of order",
        "coins; <row r=\"3\"; <row r=\"2\"; out of order",
        "coins; <v>6.25; <v>NaN; is no number",
        "coins; <f>C2*2</f><v>18.100000000000001</v>; <v>18.1</v><f>C2*2</f>; children",
        "coins; <row r=\"4\" spans=\"1:4\">; <row r=\"4\" spans=\"1:2\">; outside the spans",
        "coins; max=\"3\" width; max=\"20000\" width; out of order",
        "coins; <dataValidations count=\"1\">; <dataValidations count=\"2\">; holds 1",
        "coins; <pageMargins; <tableParts/><pageMargins; too late",
        "coins; <pageMargins; <sheetFoo/><pageMargins; sheetFoo",
        "coins; <v>1942</v>; <v>1942</v><w/>; order",
        "lots; <mergeCells count=\"1\">; <mergeCells count=\"3\">; holds 1",
        "book; sheetId=\"5\"; sheetId=\"4\"; sheet id stands twice",
        "book; name=\"Private\"; name=\"COINS\"; sheet name stands twice",
        "book; name=\"costs\"; name=\"Spot\"; defined name stands twice",
        "book; name=\"costs\"; name=\"A1\"; is no name",
        "book; <definedName name=\"costs\">; <definedName name=\"c\" localSheetId=\"9\">; missing",
        "styles; <cellXfs count=\"3\">; <cellXfs count=\"4\">; holds 3",
        "styles; numFmtId=\"164\" fontId=\"0\"; numFmtId=\"170\" fontId=\"0\"; no number format",
        "styles; numFmtId=\"14\" fontId=\"0\"; numFmtId=\"14\" fontId=\"7\"; beyond the last",
        "texts; uniqueCount=\"5\"; uniqueCount=\"7\"; holds 5",
        "table; ref=\"A1:B2\"><auto; ref=\"A1:C2\"><auto; fill the table's width",
        "table; name=\"Double\"; name=\"cost\"; column name stands twice",
        "table; name=\"Double\"; name=\"Other\"; header",
        "table; id=\"2\" name; id=\"1\" name; column id stands twice",
        "types; /xl/styles.xml; /xl/style.xml; missing part",
        "notes; ../comments1.xml; ../comments2.xml; no part",
        "links; rId5; rId4; stands twice"
      })
  void namesTheFault(String part, String sound, String broken, String word) throws IOException {
    Map<String, String> parts = SampleBook.before();
    SampleBook.change(parts, PARTS.get(part), sound, broken);
    assertThat(findings(parts)).anySatisfy(each -> assertThat(each).contains(word));
  }

  private static List<String> findings(Map<String, String> parts) throws IOException {
    return WorkbookValidator.findings(RawZip.of(SampleBook.zip(parts)));
  }
}
