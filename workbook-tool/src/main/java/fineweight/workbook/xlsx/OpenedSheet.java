package fineweight.workbook.xlsx;

import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.xlsx.formula.SheetFormulas;
import fineweight.workbook.xlsx.part.TablePart;
import fineweight.workbook.xlsx.part.WorkbookPart;
import fineweight.workbook.xlsx.sheet.CellMap;
import fineweight.workbook.xlsx.sheet.SheetFacts;
import java.util.List;

/**
 * A sheet of an opened package.
 *
 * @param map where its cells stand
 */
record OpenedSheet(
    WorkbookPart.Sheet entry,
    SheetFacts facts,
    CellMap map,
    SheetFormulas formulas,
    List<TablePart> tables) {
  /** For a sheet without cells. */
  static final SheetFacts NOTHING = new SheetFacts(-1, -1, 0, false, false, List.of(), List.of());

  String name() {
    return entry.name();
  }

  SheetSummary summary() {
    return new SheetSummary(entry.name(), entry.visibility(), facts.isProtected(), entry.isTable());
  }

  SheetLayout layout() {
    return new SheetLayout(tables.stream().map(TablePart::table).toList(), facts.merged());
  }
}
