package fineweight.workbook.xls.formula;

import fineweight.workbook.xls.formula.ChangedCells.Reference;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFEvaluationWorkbook;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.EvaluationWorkbook.ExternalSheet;
import org.apache.poi.ss.formula.EvaluationWorkbook.ExternalSheetRange;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.Area3DPtg;
import org.apache.poi.ss.formula.ptg.AreaPtgBase;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Ref3DPtg;
import org.apache.poi.ss.formula.ptg.RefPtgBase;

/** Finds out which cells a formula looks at. */
final class FormulaReferences {
  /** Functions whose cells show only when they are calculated. */
  private static final Set<String> ANYWHERE = Set.of("INDIRECT", "OFFSET");

  private final HSSFWorkbook workbook;
  private final HSSFEvaluationWorkbook formulas;

  FormulaReferences(HSSFWorkbook workbook) {
    this.workbook = workbook;
    this.formulas = HSSFEvaluationWorkbook.create(workbook);
  }

  /**
   * What a formula looks at.
   *
   * @param anywhere whether it may look at other cells as well
   */
  record Found(List<Reference> references, boolean anywhere) {}

  Found of(HSSFCell cell) {
    int sheet = workbook.getSheetIndex(cell.getSheet());
    Search search = new Search(sheet);
    search.through(
        formulas.getFormulaTokens(
            formulas.getSheet(sheet).getCell(cell.getRowIndex(), cell.getColumnIndex())));
    return new Found(search.references, search.anywhere);
  }

  /** The search through one formula and the names that it uses. */
  private final class Search {
    private final int home;
    private final List<Reference> references = new ArrayList<>();
    private final Set<Integer> names = new HashSet<>();
    private boolean anywhere;

    Search(int home) {
      this.home = home;
    }

    void through(Ptg[] tokens) {
      for (Ptg token : tokens) {
        if (token instanceof RefPtgBase cell) {
          int sheets = cell instanceof Ref3DPtg other ? other.getExternSheetIndex() : -1;
          add(sheets, cell.getRow(), cell.getColumn(), cell.getRow(), cell.getColumn());
        } else if (token instanceof AreaPtgBase area) {
          int sheets = area instanceof Area3DPtg other ? other.getExternSheetIndex() : -1;
          add(
              sheets,
              area.getFirstRow(),
              area.getFirstColumn(),
              area.getLastRow(),
              area.getLastColumn());
        } else if (token instanceof NamePtg name) {
          throughName(name);
        } else if (token instanceof AbstractFunctionPtg function) {
          anywhere |= ANYWHERE.contains(function.getName().toUpperCase(Locale.ROOT));
        }
      }
    }

    private void throughName(NamePtg name) {
      EvaluationName definition = formulas.getName(name);
      if (names.add(name.getIndex()) && definition != null && definition.hasFormula()) {
        through(definition.getNameDefinition());
      }
    }

    /**
     * @param sheets the workbook's number for a sheet or a run of sheets; -1 for the formula's own
     */
    private void add(int sheets, int firstRow, int firstColumn, int lastRow, int lastColumn) {
      int from = home;
      int to = home;
      if (sheets >= 0) {
        ExternalSheet named = formulas.getExternalSheet(sheets);
        if (named == null || named.getWorkbookName() != null) {
          // The cells of another file do not change.
          return;
        }
        from = workbook.getSheetIndex(named.getSheetName());
        to =
            named instanceof ExternalSheetRange run
                ? workbook.getSheetIndex(run.getLastSheetName())
                : from;
      }
      for (int sheet = from; sheet >= 0 && sheet <= to; sheet++) {
        references.add(new Reference(sheet, firstRow, firstColumn, lastRow, lastColumn));
      }
    }
  }
}
