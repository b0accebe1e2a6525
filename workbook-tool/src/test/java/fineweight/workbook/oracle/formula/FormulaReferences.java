package fineweight.workbook.oracle.formula;

import fineweight.workbook.oracle.parts.Places;
import fineweight.workbook.oracle.parts.Places.Area;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a formula text refers to. Knows nothing of what the formula calculates: it takes out
 * strings, tells references from names and functions, and says when it cannot be sure.
 */
final class FormulaReferences {
  private static final String WORD = "[\\p{L}_\\\\][\\p{L}\\p{N}_.\\\\?]*";
  private static final String END = "(?![\\p{L}\\p{N}_.(!\\[])";
  private static final int LETTERS = Pattern.CASE_INSENSITIVE;
  private static final Pattern STRING = Pattern.compile("\"(?:[^\"]|\"\")*\"");
  private static final Pattern SHEET =
      Pattern.compile(
          "(?:'(?<quoted>(?:[^']|'')+)'|(?<plain>(?:\\[\\d+\\])?(?:"
              + WORD
              + "(?::"
              + WORD
              + ")?)?))!");
  private static final Pattern CELLS =
      Pattern.compile(
          "(\\$?)([A-Z]{1,3})(\\$?)(\\d{1,7})(?::(\\$?)([A-Z]{1,3})(\\$?)(\\d{1,7}))?" + END,
          LETTERS);
  private static final Pattern COLUMNS =
      Pattern.compile("(\\$?)([A-Z]{1,3}):(\\$?)([A-Z]{1,3})" + END, LETTERS);
  private static final Pattern ROWS = Pattern.compile("(\\$?)(\\d{1,7}):(\\$?)(\\d{1,7})" + END);
  private static final Pattern NUMBER = Pattern.compile("\\d+\\.?\\d*(?:E[+-]?\\d+)?", LETTERS);
  private static final Pattern ERROR = Pattern.compile("#[A-Z0-9/]+[!?]?", LETTERS);
  private static final Pattern NAME = Pattern.compile(WORD);

  /** Functions whose arguments do not tell what they read. */
  private static final Set<String> BLIND = Set.of("INDIRECT", "OFFSET");

  private final String formula;
  private final List<Reference> found = new ArrayList<>();
  private boolean uncertain;
  private int at;

  /** One thing a formula refers to. */
  sealed interface Reference {}

  /**
   * @param firstSheet empty for the formula's own sheet
   * @param lastSheet another one for a reference through several sheets
   * @param fixed whether first row, first column, last row, last column stay when copied
   */
  record Cells(String firstSheet, String lastSheet, Area area, boolean[] fixed)
      implements Reference {
    /** The reference as it reads in a cell that lies so much further down and right. */
    Area moved(int rows, int columns) {
      return new Area(
          area.sheet(),
          fixed[0] ? area.firstRow() : area.firstRow() + rows,
          fixed[1] ? area.firstColumn() : area.firstColumn() + columns,
          fixed[2] ? area.lastRow() : area.lastRow() + rows,
          fixed[3] ? area.lastColumn() : area.lastColumn() + columns);
    }

    boolean relative() {
      return !(fixed[0] && fixed[1] && fixed[2] && fixed[3]);
    }
  }

  /**
   * @param sheet the sheet it is scoped to; empty if none is written
   */
  record Name(String sheet, String name) implements Reference {}

  /**
   * @param table empty for the table in which the formula stands
   * @param inside what stands between the outer brackets
   */
  record TableColumns(String table, String inside) implements Reference {}

  private FormulaReferences(String formula) {
    this.formula = formula;
  }

  /** All references of a formula without equals sign; those into other files are left out. */
  static FormulaReferences of(String formula) {
    FormulaReferences references = new FormulaReferences(formula);
    while (references.at < formula.length()) {
      references.step();
    }
    return references;
  }

  List<Reference> found() {
    return found;
  }

  /** Whether the formula may read cells that its text does not name. */
  boolean uncertain() {
    return uncertain;
  }

  private void step() {
    if (here(STRING) != null) {
      return;
    }
    Matcher sheet = here(SHEET);
    if (sheet != null) {
      String quoted = sheet.group("quoted");
      target(quoted == null ? sheet.group("plain") : quoted.replace("''", "'"));
      return;
    }
    if (here(ERROR) == null && !target("") && here(NUMBER) == null) {
      // A colon that no reference swallowed joins something computed.
      uncertain |= formula.charAt(at) == ':';
      at++;
    }
  }

  /** Takes what stands here as a reference; the sheet before it is already read. */
  private boolean target(String sheet) {
    boolean external = sheet.contains("[") && !sheet.startsWith("[0]");
    String own = sheet.startsWith("[0]") ? "" : sheet;
    Matcher cells = here(CELLS);
    Matcher columns = cells == null ? here(COLUMNS) : null;
    Matcher rows = cells == null && columns == null ? here(ROWS) : null;
    if (cells != null) {
      add(external, own, cellArea(cells), cellsFixed(cells));
    } else if (columns != null) {
      int first = Places.column(columns.group(2).toUpperCase(Locale.ROOT));
      int last = Places.column(columns.group(4).toUpperCase(Locale.ROOT));
      boolean[] fixed = {true, fixed(columns, 1), true, fixed(columns, 3)};
      add(external, own, area(0, first, Area.LAST_ROW, last), fixed);
    } else if (rows != null) {
      int first = Integer.parseInt(rows.group(2)) - 1;
      int last = Integer.parseInt(rows.group(4)) - 1;
      boolean[] fixed = {fixed(rows, 1), true, fixed(rows, 3), true};
      add(external, own, area(first, 0, last, Area.LAST_COLUMN), fixed);
    } else {
      return word(external, own);
    }
    return true;
  }

  private boolean word(boolean external, String sheet) {
    Matcher name = here(NAME);
    char next = at < formula.length() ? formula.charAt(at) : ' ';
    if (name == null && next != '[') {
      return false;
    }
    String word = name == null ? "" : name.group();
    if (next == '(') {
      uncertain |= BLIND.contains(word.toUpperCase(Locale.ROOT));
    } else if (next == '[') {
      found.add(new TableColumns(word, brackets()));
    } else if (!external && !word.equalsIgnoreCase("TRUE") && !word.equalsIgnoreCase("FALSE")) {
      found.add(new Name(sheet, word));
    }
    return true;
  }

  private String brackets() {
    int start = at;
    int depth = 0;
    while (at < formula.length()) {
      char letter = formula.charAt(at++);
      if (letter == '\'') {
        at++;
      } else if (letter == '[') {
        depth++;
      } else if (letter == ']' && --depth == 0) {
        return formula.substring(start + 1, at - 1);
      }
    }
    uncertain = true;
    return formula.substring(Math.min(start + 1, formula.length()));
  }

  private void add(boolean external, String sheets, Area area, boolean[] fixed) {
    if (!external) {
      int colon = sheets.indexOf(':');
      String first = colon < 0 ? sheets : sheets.substring(0, colon);
      String last = colon < 0 ? sheets : sheets.substring(colon + 1);
      found.add(new Cells(first, last, area, fixed));
    }
  }

  private Matcher here(Pattern pattern) {
    if (at >= formula.length()) {
      return null;
    }
    Matcher matcher = pattern.matcher(formula).region(at, formula.length());
    matcher.useTransparentBounds(true);
    if (!matcher.lookingAt()) {
      return null;
    }
    at = matcher.end();
    return matcher;
  }

  private static Area cellArea(Matcher cells) {
    int column = Places.column(cells.group(2).toUpperCase(Locale.ROOT));
    int row = Integer.parseInt(cells.group(4)) - 1;
    if (cells.group(6) == null) {
      return area(row, column, row, column);
    }
    int lastColumn = Places.column(cells.group(6).toUpperCase(Locale.ROOT));
    int lastRow = Integer.parseInt(cells.group(8)) - 1;
    return area(
        Math.min(row, lastRow),
        Math.min(column, lastColumn),
        Math.max(row, lastRow),
        Math.max(column, lastColumn));
  }

  private static boolean[] cellsFixed(Matcher cells) {
    boolean row = fixed(cells, 3);
    boolean column = fixed(cells, 1);
    boolean single = cells.group(6) == null;
    return new boolean[] {
      row, column, single ? row : fixed(cells, 7), single ? column : fixed(cells, 5)
    };
  }

  private static Area area(int firstRow, int firstColumn, int lastRow, int lastColumn) {
    return new Area("", firstRow, firstColumn, lastRow, lastColumn);
  }

  private static boolean fixed(Matcher reference, int group) {
    return "$".equals(reference.group(group));
  }
}
