package fineweight.workbook.oracle.formula;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.Places;
import fineweight.workbook.oracle.parts.Places.Area;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** All formula cells of a workbook, shared ones written out. */
final class Formulas {
  private final List<FormulaCell> cells = new ArrayList<>();

  /**
   * @param down how many rows the cell lies below the one whose text it shares
   * @param right the same for columns
   * @param results all cells that show a result of this formula
   * @param dataTable whether it is a what-if table, whose text says little
   */
  record FormulaCell(
      CellPlace place, String text, int down, int right, Area results, boolean dataTable) {}

  Formulas(PackageParts parts) throws IOException {
    for (PackageParts.Sheet sheet : parts.sheets()) {
      if (sheet.isTable()) {
        collect(sheet.name(), parts.tree(sheet.part()));
      }
    }
  }

  List<FormulaCell> cells() {
    return cells;
  }

  private void collect(String sheet, XmlElement worksheet) {
    Map<CellPlace, XmlElement> formulas = new HashMap<>();
    Map<String, CellPlace> masters = new HashMap<>();
    int nextRow = 1;
    for (XmlElement row :
        worksheet.child("sheetData").map(each -> each.all("row")).orElse(List.of())) {
      int number = row.get("r").isEmpty() ? nextRow : Integer.parseInt(row.get("r").strip());
      nextRow = number + 1;
      int next = 0;
      for (XmlElement cell : row.all("c")) {
        CellPlace place =
            cell.get("r").isEmpty()
                ? new CellPlace(sheet, number - 1, next)
                : Places.place(sheet, cell.get("r"));
        next = place.column() + 1;
        cell.child("f").ifPresent(formula -> formulas.put(place, formula));
      }
    }
    formulas.forEach(
        (place, formula) -> {
          if (formula.get("t").equals("shared") && !formula.text().isBlank()) {
            masters.put(formula.get("si"), place);
          }
        });
    formulas.forEach((place, formula) -> cells.add(cell(place, formula, masters, formulas)));
  }

  private static FormulaCell cell(
      CellPlace place,
      XmlElement formula,
      Map<String, CellPlace> masters,
      Map<CellPlace, XmlElement> formulas) {
    String kind = formula.get("t");
    if (kind.equals("shared") && formula.text().isBlank()) {
      CellPlace master = masters.getOrDefault(formula.get("si"), place);
      return new FormulaCell(
          place,
          formulas.get(master).text(),
          place.row() - master.row(),
          place.column() - master.column(),
          Area.of(place),
          false);
    }
    boolean spread = kind.equals("array") || kind.equals("dataTable");
    Area results =
        spread && !formula.get("ref").isEmpty()
            ? Places.area(place.sheet(), formula.get("ref"))
            : Area.of(place);
    return new FormulaCell(place, formula.text(), 0, 0, results, kind.equals("dataTable"));
  }
}
