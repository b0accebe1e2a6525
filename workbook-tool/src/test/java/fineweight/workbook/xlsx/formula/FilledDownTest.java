package fineweight.workbook.xlsx.formula;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilledDownTest {
  private static final int ROW = 41;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "A1+1 | A2+1 | 1 | true",
        "A1+1 | A2+2 | 1 | false",
        "A1+1 | A3+1 | 1 | false",
        "A9*$B$1 | A10*$B$1 | 1 | true",
        "A9*B$1 | A10*B$1 | 1 | true",
        "A9*B$1 | A10*B$2 | 1 | false",
        "$A9 | $A12 | 3 | true",
        "$A9 | $B12 | 3 | false",
        "A1 | A1 | 1 | false",
        "LOG10(A1) | LOG10(A2) | 1 | true",
        "LOG10(A1) | LOG11(A2) | 1 | false",
        "Lot5!A1 | Lot5!A2 | 1 | true",
        "Lot5!A1 | Lot6!A2 | 1 | false",
        "Lot5:Lot9!A1 | Lot5:Lot9!A2 | 1 | true",
        "'A1'!B1 | 'A1'!B2 | 1 | true",
        "'A1'!B1 | 'A2'!B2 | 1 | false",
        "\"A1\"&B1 | \"A1\"&B2 | 1 | true",
        "\"A1\"&B1 | \"A2\"&B2 | 1 | false",
        "SUM(5:7) | SUM(5:7) | 1 | false",
        "Fineweight_XAG*A1 | Fineweight_XAG*A2 | 1 | true",
        "T[[#This Row],[x]] | T[[#This Row],[x]] | 1 | false",
        "ROUND(Q99*2,2) | ROUND(Q100*2,2) | 1 | true",
        "A9 | A10B | 1 | false",
        "A9 | A10 | 1 | true",
        "A9 | A | 1 | false",
        "A9+B9 | A10+B9 | 1 | false",
        "A1048575 | A1048576 | 1 | true",
        "A1 | A99999992 | 1 | false",
        "M\u00fcnze1+A1 | M\u00fcnze1+A2 | 1 | true",
      })
  void onlyTheSameFormulaFurtherDown(String above, String below, int distance, boolean same) {
    assertThat(FilledDown.of(above, ROW).matches(below, ROW + distance)).isEqualTo(same);
  }

  @Property
  boolean relativeRowsMoveWithTheCell(
      @ForAll @IntRange(min = 0, max = 99_999) int row,
      @ForAll @IntRange(min = 0, max = 16_383) int column,
      @ForAll @IntRange(min = 1, max = 999) int distance,
      @ForAll @IntRange(min = 0, max = 3) int further,
      @ForAll boolean fixed) {
    int found = further == 0 ? 0 : further == 1 ? distance : further;
    String above = new CellReference(row, column, fixed, false).formatAsString() + "*2";
    String below = new CellReference(row + found, column, fixed, false).formatAsString() + "*2";
    return FilledDown.of(above, ROW).matches(below, ROW + distance)
        == (found == (fixed ? 0 : distance));
  }
}
