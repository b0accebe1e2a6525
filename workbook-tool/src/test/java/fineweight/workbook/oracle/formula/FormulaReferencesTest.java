package fineweight.workbook.oracle.formula;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.formula.FormulaReferences.Cells;
import fineweight.workbook.oracle.formula.FormulaReferences.Name;
import fineweight.workbook.oracle.formula.FormulaReferences.TableColumns;
import fineweight.workbook.oracle.parts.Places.Area;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaReferencesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '|',
      value = {
        "A1;1",
        "SUM(A1:B2,C3);2",
        "$A$1+B$2;2",
        "'It''s mine'!A1*2;1",
        "Sheet1:Sheet3!A1;1",
        "SUM(A:A)+SUM(1:2);2",
        "\"A1\"&B1;1",
        "LOG10(A1)+1E5;1",
        "[1]Prices!A1+A2;1",
        "IF(A1=#N/A,TRUE,B1#);2",
        "_xlfn.XLOOKUP(A1,coins[Year],coins[[#All],[Cost]]);3",
        "spot*[@Ounces];2"
      })
  void findsEveryReference(String formula, int count) {
    assertThat(FormulaReferences.of(formula).found()).hasSize(count);
    assertThat(FormulaReferences.of(formula).uncertain()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"INDIRECT(\"A\"&1)", "SUM(OFFSET(A1,1,1))", "SUM(A1:INDEX(B:B,3))"})
  void saysWhenAReferenceIsComputed(String formula) {
    assertThat(FormulaReferences.of(formula).uncertain()).isTrue();
  }

  @Test
  void readsAreaSheetAndSigns() {
    Cells cells = (Cells) FormulaReferences.of("'My coins'!$B3:C$4").found().get(0);
    assertThat(cells.firstSheet()).isEqualTo("My coins");
    assertThat(cells.moved(10, 5)).isEqualTo(new Area("", 12, 1, 3, 7));
  }

  @Test
  void tellsNamesFromTables() {
    assertThat(FormulaReferences.of("spot+Lots!rate").found())
        .containsExactly(new Name("", "spot"), new Name("Lots", "rate"));
    assertThat(FormulaReferences.of("T[[#This Row],[A'[b]]]").found())
        .containsExactly(new TableColumns("T", "[#This Row],[A'[b]"));
  }

  @Test
  void columnsCountFromA() {
    assertThat(new CellPlace("", 0, 27)).hasToString("AB1");
    assertThat(fineweight.workbook.oracle.parts.Places.column("AB")).isEqualTo(27);
  }
}
