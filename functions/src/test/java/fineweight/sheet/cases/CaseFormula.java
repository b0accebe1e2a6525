package fineweight.sheet.cases;

import java.util.ArrayList;
import java.util.List;

/**
 * A case as a formula on a sheet: the formula in column A, what it refers to beside it. Every case
 * has rows of its own.
 *
 * @param one the case
 * @param row of the formula, from 0
 * @param formula without the equals sign
 * @param filled the cells that the formula refers to
 */
public record CaseFormula(SheetCase one, int row, String formula, List<Filled> filled) {
  /** Rows for each case: the tallest area and a blank row. */
  public static final int ROWS = 4;

  private static final int FIRST_COLUMN = 2;

  /** The columns of one argument. */
  private static final int COLUMNS = 3;

  /** How formulas are written. */
  public enum Syntax {
    /** Commas and plain cell names. */
    COMMAS(",", "", "", ":"),
    /** OpenFormula as an .ods holds it: semicolons, and cell names in brackets after a point. */
    OPEN_FORMULA(";", "[.", "]", ":.");

    private final String separator;
    private final String before;
    private final String after;
    private final String through;

    Syntax(String separator, String before, String after, String through) {
      this.separator = separator;
      this.before = before;
      this.after = after;
      this.through = through;
    }
  }

  /** Where single arguments stand. */
  public enum Style {
    /** In the formula, but for blank cells and areas. */
    TYPED,
    /** Every one in a cell of its own. */
    IN_CELLS
  }

  /**
   * A cell that holds something.
   *
   * @param row from 0
   * @param column from 0
   */
  public record Filled(int row, int column, CaseCell cell) {}

  /** The formulas of the whole table. */
  public static List<CaseFormula> all(Style style, Syntax syntax) {
    List<CaseFormula> formulas = new ArrayList<>();
    for (SheetCase one : SheetCase.all()) {
      formulas.add(of(one, formulas.size() * ROWS, style, syntax));
    }
    return formulas;
  }

  private static CaseFormula of(SheetCase one, int row, Style style, Syntax syntax) {
    List<String> texts = new ArrayList<>();
    List<Filled> filled = new ArrayList<>();
    int column = FIRST_COLUMN;
    for (CaseArgument argument : one.arguments()) {
      boolean typed = style == Style.TYPED && !argument.area();
      CaseCell.Kind kind = argument.cell().kind();
      if (!argument.area() && kind == CaseCell.Kind.LEFT_OUT) {
        texts.add("");
      } else if (typed && kind != CaseCell.Kind.BLANK) {
        texts.add(literal(argument.cell()));
      } else {
        texts.add(reference(argument, row, column, syntax));
        fill(argument, row, column, filled);
      }
      column += COLUMNS;
    }
    return new CaseFormula(
        one, row, one.function() + "(" + String.join(syntax.separator, texts) + ")", filled);
  }

  private static String literal(CaseCell cell) {
    return cell.kind() == CaseCell.Kind.TEXT
        ? "\"" + cell.text().replace("\"", "\"\"") + "\""
        : cell.text();
  }

  private static String reference(CaseArgument argument, int row, int column, Syntax syntax) {
    String first = syntax.before + name(row, column);
    int height = argument.rows().size();
    int width = argument.rows().get(0).size();
    String last =
        height * width == 1 ? "" : syntax.through + name(row + height - 1, column + width - 1);
    return first + last + syntax.after;
  }

  private static void fill(CaseArgument argument, int row, int column, List<Filled> filled) {
    for (int down = 0; down < argument.rows().size(); down++) {
      List<CaseCell> cells = argument.rows().get(down);
      for (int right = 0; right < cells.size(); right++) {
        CaseCell cell = cells.get(right);
        if (cell.kind() == CaseCell.Kind.NUMBER || cell.kind() == CaseCell.Kind.TEXT) {
          filled.add(new Filled(row + down, column + right, cell));
        }
      }
    }
  }

  private static String name(int row, int column) {
    String letters = "";
    for (int rest = column; rest >= 0; rest = rest / 26 - 1) {
      letters = (char) ('A' + rest % 26) + letters;
    }
    return letters + (row + 1);
  }
}
