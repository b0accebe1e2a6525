package fineweight.workbook.xlsx.formula;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.part.TablePart;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaReaderTest {
  private static final Vocabulary WORDS = words();

  private static Vocabulary words() {
    Vocabulary words = new Vocabulary();
    words.addSheet("Coins");
    words.addSheet("It's 2");
    words.addSheet("Third");
    words.addTable(
        1,
        new TablePart(
            new SheetLayout.Table("Mine", new SheetLayout.Area(1, 1, 5, 3), 1, 1),
            List.of("Coin", "Fine [g]", "Paid")));
    words.addName(-1, "Spot", "Coins!$C$1");
    words.addName(-1, "Twice", "Spot*2");
    words.addName(-1, "Loop", "Loop+Coins!$D$1");
    words.addName(-1, "Beside", "Coins!B1");
    for (int i = 0; i < 60; i++) {
      words.addName(-1, "Deep" + i, "Deep" + (i + 1) + "+Deep" + (i + 1));
    }
    words.addName(-1, "Deep60", "Coins!$A$1");
    return words;
  }

  /** Written as sheet number, first and last cell as seen from cell J10 of sheet 0. */
  private static List<String> areas(String formula) {
    return FormulaReader.read(WORDS, formula, 0, 9, 9).areas().stream()
        .map(
            a ->
                a.firstSheet()
                    + (a.firstSheet() == a.lastSheet() ? "" : "-" + a.lastSheet())
                    + " "
                    + cell(a.first())
                    + ":"
                    + cell(a.last()))
        .toList();
  }

  private static String cell(Reference.Corner corner) {
    int row = corner.rowFrom(9);
    int column = corner.columnFrom(9);
    String letters = column == CellRef.COLUMNS - 1 ? "*" : CellPlace.letters(column);
    return letters + (row == CellRef.ROWS - 1 ? "*" : row + 1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "A1+$B$2|-1 A1:A1;-1 B2:B2",
        "SUM(A1:B$3)|-1 A1:B3",
        "SUM($A:C)|-1 A1:C*",
        "SUM(5:$6)|-1 A5:*6",
        "'It''s 2'!B7*2|1 B7:B7",
        "Third!A1:B2|2 A1:B2",
        "SUM(Coins:Third!A1)|0-2 A1:A1",
        "SUM('Coins:It''s 2'!A1:A2)|0-1 A1:A2",
        "LOG10(A1)|-1 A1:A1",
        "A1:INDEX(B:B,3)|-1 A1:A1;-1 B1:B*",
        "Spot*2|0 C1:C1",
        "Twice|0 C1:C1",
        "Loop|0 D1:D1",
        "Deep0|0 A1:A1",
        "Beside|0 K10:K10",
        "Coins!Spot|0 C1:C1",
        "[0]!Spot|0 C1:C1",
        "SUM(Mine)|1 B3:D5",
        "SUM(Mine[Paid])|1 D3:D5",
        "Mine[[#This Row],[Fine '[g']]]|1 C10:C10",
        "Mine[@Paid]|1 D10:D10",
        "SUM(Mine[[#All],[Coin]:[Fine '[g']]])|1 B2:C6",
        "Mine[[#Totals],[Paid]]|1 D6:D6",
        "Mine[[#Headers],[Paid]]|1 D2:D2",
        "IF(A1=\"B2\"\"C3\",{1,2},D4)|-1 A1:A1;-1 D4:D4",
        "1.5E5+2E3+A1|-1 A1:A1",
        "#REF!+#N/A+A1|-1 A1:A1",
        "a1|-1 A1:A1"
      })
  void findsAreas(String formula, String expected) {
    assertThat(String.join(";", areas(formula))).isEqualTo(expected);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"A1\"",
        "[1]Coins!A1",
        "'[1]It''s 2'!A1",
        "Gone!A1",
        "TRUE",
        "XFE1",
        "A1048577",
        "Unknown",
        "SUM(",
        "'open",
        "\"open",
        "Mine[",
        "[",
        "A1B2C3",
        "[1]!Spot",
        "",
        "!",
        "A:"
      })
  void findsNoneWhereThereIsNone(String formula) {
    assertThat(areas(formula).stream().filter(a -> !a.startsWith("1 ")).toList()).isEmpty();
  }
}
