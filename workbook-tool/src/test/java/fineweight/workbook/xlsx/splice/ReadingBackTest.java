package fineweight.workbook.xlsx.splice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.xlsx.part.SharedStrings;
import fineweight.workbook.xlsx.sheet.CellMap;
import fineweight.workbook.xlsx.sheet.CellReading;
import fineweight.workbook.xlsx.sheet.SheetFacts;
import fineweight.workbook.xlsx.style.Styles;
import fineweight.workbook.xlsx.style.StylesPart;
import fineweight.workbook.xlsx.xml.DamageException;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sheet that was written otherwise than it was wished for is noticed. */
class ReadingBackTest {
  private static final String BEFORE =
      """
      <worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>\
      <row r="1"><c r="A1" t="inlineStr"><is><t>Year</t></is></c></row>\
      <row r="2"><c r="A2"><v>1964</v></c></row>\
      <row r="3"><c r="A3"><v>1921</v></c><c r="B3"><v>9</v></c></row>\
      <row r="9"><c r="A9"><v>7</v></c></row>\
      </sheetData></worksheet>""";

  private static CellReading reading() {
    return new CellReading(new Styles(StylesPart.fresh()), SharedStrings.none(), false);
  }

  private static CellContent content(int row) {
    return switch (row) {
      case 1 -> new CellContent.Text("silver");
      case 2 -> new CellContent.Number(new BigDecimal("0.3617"));
      case 3 -> CellContent.Formula.number("A3*2", new BigDecimal("12.50"));
      case 4 -> CellContent.Formula.text("A3&\"\"", "old");
      default -> CellContent.EMPTY;
    };
  }

  private static SheetPlan plan() {
    ColumnEdit column = new ColumnEdit(1, "Melt", CellLook.GENERAL, 0, ReadingBackTest::content);
    SheetEdit sheet = new SheetEdit("Coins", 0, 1, 9, List.of(column));
    return new SheetPlan(
        "Coins",
        "xl/worksheets/sheet1.xml",
        new SheetFacts(8, 1, 0, false, false, List.of(), List.of()),
        CellMap.NONE,
        List.of(ColumnTarget.fill(sheet, column, column.cells())),
        reading());
  }

  private static ByteArrayInputStream bytes(String xml) {
    return new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8));
  }

  private static String written(SheetPlan plan, WishTrail wishes) throws Exception {
    Outcome analysed = plan.analyse(bytes(BEFORE), false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    plan.write(bytes(BEFORE), out, analysed, new OwnersResults(), null, wishes);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static boolean isIn(String part, String instead) throws Exception {
    SheetPlan plan = plan();
    WishTrail wishes = new WishTrail();
    String xml = written(plan, wishes);
    assertThat(xml).contains(part);
    return plan.isIn(bytes(xml.replace(part, instead)), reading(), wishes);
  }

  @Test
  void whatWasWrittenIsAsWished() throws Exception {
    assertThat(isIn("<row", "<row")).isTrue();
    assertThat(isIn("<row", "\n  <row")).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "<t>silver</t> | <t>gold</t>",
        "<t>Melt</t> | <t>Metal</t>",
        "0.3617 | 0.3618",
        "<f>A3*2</f> | <f>A3*3</f>",
        "<v>12.5</v> | <v>12.6</v>",
        "<v>12.5</v> | ``",
        "<v>old</v> | <v>new</v>",
        "<f>A3*2</f> | ``",
        "<c r=\"B2\" t=\"inlineStr\"><is><t>silver</t></is></c> | ``",
        "r=\"B2\" | r=\"C2\"",
        "<row r=\"4\"> | <row r=\"6\">",
        "</row><row r=\"9\"> | <c r=\"D5\"/></row><row r=\"8\"><c r=\"B8\"><v>1</v></c></row><row r=\"9\">",
      })
  void anotherContentIsNoticed(String part, String instead) throws Exception {
    String other = instead == null ? "" : instead;
    boolean noticed;
    try {
      noticed = !isIn(part, other);
    } catch (DamageException e) {
      noticed = true;
    }
    assertThat(noticed).isTrue();
  }

  @Test
  void aRowThatIsMissingIsNoticed() throws Exception {
    SheetPlan plan = plan();
    WishTrail wishes = new WishTrail();
    String xml = written(plan, wishes);
    String without = xml.replaceFirst("<row r=\"4\">.*?</row>", "");
    assertThat(without).isNotEqualTo(xml);
    assertThat(plan.isIn(bytes(without), reading(), wishes)).isFalse();
  }

  @Test
  void whatIsNoXmlIsRefused() {
    assertThatThrownBy(() -> isIn("</sheetData>", "")).isInstanceOf(DamageException.class);
  }
}
