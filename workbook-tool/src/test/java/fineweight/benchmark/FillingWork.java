package fineweight.benchmark;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.WorkbookEdit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** What every way has to do: six columns filled anew and six added, the calculation almost free. */
final class FillingWork {
  static final int FIRST = InventoryFile.OWNER_COLUMNS;
  static final List<String> HEADERS =
      List.of(
          "Metal",
          "Fine oz",
          "Melt",
          "State",
          "Ground",
          "Note",
          "Fine g",
          "Gold oz",
          "Gold melt",
          "Share",
          "Question",
          "Worth");

  private static final String[] STATES = {"valued", "several", "not known", "nothing to value"};

  private FillingWork() {}

  static WorkbookEdit edit(int rows) {
    List<ColumnEdit> columns = new ArrayList<>();
    List<IntFunction<CellContent>> contents = contents();
    for (int i = 0; i < contents.size(); i++) {
      boolean figure = i == 1 || i == 2 || i > 5 && i != 10;
      CellLook look = figure ? CellLook.number("0.0000") : CellLook.GENERAL;
      columns.add(new ColumnEdit(FIRST + i, HEADERS.get(i), look, 12, contents.get(i)));
    }
    return new WorkbookEdit(
        List.of(new SheetEdit(InventoryFile.SHEET, 0, 1, rows, columns)),
        List.of(),
        List.of(),
        WorkbookEdit.Removal.NOTHING);
  }

  /** By column; the row counts from 0. */
  static List<IntFunction<CellContent>> contents() {
    return List.of(
        row -> text(row % 7 == 0 ? "gold" : "silver"),
        row -> new CellContent.Number(ounces(row)),
        row -> formula("ROUND(Q" + (row + 1) + "*Fineweight_XAG,2)", melt(row)),
        row -> text(STATES[row % 4]),
        row -> text(row % 4 == 1 ? "which mint letter stands over the dome?" : "type and date"),
        row -> text("fine mass by the law of " + (1792 + row % 120)),
        row -> new CellContent.Number(ounces(row).multiply(new BigDecimal("31.1034768"))),
        row -> row % 7 == 0 ? new CellContent.Number(ounces(row)) : CellContent.EMPTY,
        row -> formula("ROUND(W" + (row + 1) + "*2000,2)", BigDecimal.ZERO),
        row -> formula("R" + (row + 1) + "/2", melt(row).divide(BigDecimal.valueOf(2))),
        row -> row % 4 == 1 ? text("weigh it: 5.00 g or 6.25 g?") : CellContent.EMPTY,
        row -> formula("MAX(R" + (row + 1) + ",E" + (row + 1) + ")", melt(row)));
  }

  private static CellContent text(String text) {
    return new CellContent.Text(text);
  }

  private static CellContent formula(String formula, BigDecimal result) {
    return CellContent.Formula.number(formula, result);
  }

  private static BigDecimal ounces(int row) {
    return BigDecimal.valueOf(7_234 + row % 50_000, 5);
  }

  private static BigDecimal melt(int row) {
    return ounces(row).multiply(BigDecimal.valueOf(30)).setScale(2, RoundingMode.HALF_UP);
  }
}
