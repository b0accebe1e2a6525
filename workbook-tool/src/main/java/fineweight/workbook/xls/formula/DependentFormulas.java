package fineweight.workbook.xls.formula;

import fineweight.workbook.CellPlace;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;

/** Finds the formulas whose results depend on given cells, directly or by way of others. */
public final class DependentFormulas {
  private final HSSFWorkbook workbook;
  private final ChangedCells changed = new ChangedCells();

  private DependentFormulas(HSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  private record Formula(HSSFCell cell, int sheet, FormulaReferences.Found looksAt) {}

  /**
   * The formulas that look at the places, these themselves not among them. One whose cells show
   * only when it is calculated counts as looking at all.
   */
  public static List<HSSFCell> lookingAt(Collection<CellPlace> places, HSSFWorkbook workbook) {
    DependentFormulas search = new DependentFormulas(workbook);
    for (CellPlace place : places) {
      int sheet = workbook.getSheetIndex(place.sheet());
      if (sheet >= 0) {
        search.changed.add(sheet, place.row(), place.column());
      }
    }
    return places.isEmpty() ? List.of() : search.dependents();
  }

  /** Passes to and fro until nothing is added: most chains run along the rows one way. */
  private List<HSSFCell> dependents() {
    List<Formula> others = formulas();
    List<HSSFCell> dependents = new ArrayList<>();
    int before;
    do {
      before = dependents.size();
      List<Formula> rest = new ArrayList<>();
      for (Formula formula : others) {
        if (isDependent(formula)) {
          dependents.add(formula.cell());
          changed.add(
              formula.sheet(), formula.cell().getRowIndex(), formula.cell().getColumnIndex());
        } else {
          rest.add(formula);
        }
      }
      Collections.reverse(rest);
      others = rest;
    } while (dependents.size() > before);
    return dependents;
  }

  private boolean isDependent(Formula formula) {
    return formula.looksAt().anywhere()
        || formula.looksAt().references().stream().anyMatch(changed::touches);
  }

  private List<Formula> formulas() {
    List<Formula> formulas = new ArrayList<>();
    FormulaReferences references = new FormulaReferences(workbook);
    for (int sheet = 0; sheet < workbook.getNumberOfSheets(); sheet++) {
      for (Row row : workbook.getSheetAt(sheet)) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA
              && !changed.has(sheet, cell.getRowIndex(), cell.getColumnIndex())) {
            formulas.add(new Formula((HSSFCell) cell, sheet, references.of((HSSFCell) cell)));
          }
        }
      }
    }
    return formulas;
  }
}
