package fineweight.workbook.xlsx.formula;

import fineweight.workbook.xlsx.formula.Reference.Corner;
import fineweight.workbook.xlsx.part.CellRef;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the references in one formula text. What is not understood is passed over. */
final class FormulaReader {
  private static final Pattern BOUND =
      Pattern.compile("(\\$?)([A-Za-z]{1,3})?(?:(\\$?)([0-9]{1,7}))?");
  private static final int OUTSIDE = -3;

  private final Vocabulary vocabulary;
  private final String text;
  private final int sheet;
  private final int row;
  private final int column;
  private final Set<Reference> areas = new LinkedHashSet<>();
  private final Set<String> names = new HashSet<>();
  private int at;

  private FormulaReader(Vocabulary vocabulary, String text, int sheet, int row, int column) {
    this.vocabulary = vocabulary;
    this.text = text;
    this.sheet = sheet;
    this.row = row;
    this.column = column;
  }

  /**
   * @param sheet the formula's own sheet
   */
  static Needs read(Vocabulary vocabulary, String text, int sheet, int row, int column) {
    FormulaReader reader = new FormulaReader(vocabulary, text, sheet, row, column);
    reader.scan();
    return new Needs(List.copyOf(reader.areas), reader.names);
  }

  private void scan() {
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '"') {
        quoted('"');
      } else if (c == '\'') {
        String sheets = quoted('\'');
        if (take('!')) {
          qualified(sheets);
        }
      } else if (c == '[') {
        boolean here = bracketed().equals("0");
        String sheets = word();
        if (take('!')) {
          int sheet = here && sheets.isEmpty() ? Reference.OWN : OUTSIDE;
          reference(word(), sheet, sheet);
        } else if (!sheets.isEmpty()) {
          at -= sheets.length();
        }
      } else if (c == '#') {
        at++;
        word();
        take('!');
      } else if (FilledDown.inWord(c)) {
        wordOrReference();
      } else {
        at++;
      }
    }
  }

  private void wordOrReference() {
    String word = word();
    if (take('!')) {
      qualified(word);
      return;
    }
    if (peek() == ':') {
      int mark = at++;
      String second = word();
      if (!second.isEmpty() && take('!')) {
        qualified(word + ":" + second);
        return;
      }
      at = mark;
    }
    if (peek() == '(') {
      return;
    }
    if (peek() == '[') {
      table(word, bracketed());
    } else {
      reference(word, Reference.OWN, Reference.OWN);
    }
  }

  private void qualified(String sheets) {
    int colon = sheets.indexOf(':');
    int first = sheetNumber(colon < 0 ? sheets : sheets.substring(0, colon));
    int last = colon < 0 ? first : sheetNumber(sheets.substring(colon + 1));
    String word = word();
    if (peek() == '(') {
      return;
    }
    if (peek() == '[') {
      table(word, bracketed());
      return;
    }
    reference(word, Math.min(first, last), Math.max(first, last));
  }

  private int sheetNumber(String name) {
    int number = name.contains("[") ? OUTSIDE : vocabulary.sheet(name);
    return number < 0 ? OUTSIDE : number;
  }

  /** A cell, an area, whole columns or rows, or a name. */
  private void reference(String word, int firstSheet, int lastSheet) {
    Matcher one = BOUND.matcher(word);
    boolean bound = !word.isEmpty() && one.matches();
    if (bound && peek() == ':') {
      int mark = at++;
      String second = word();
      Matcher other = BOUND.matcher(second);
      if (!second.isEmpty() && peek() != '(' && other.matches() && sameKind(one, other)) {
        add(firstSheet, lastSheet, corner(one, false), corner(other, true));
        return;
      }
      at = mark;
    }
    if (bound && one.group(2) != null && one.group(4) != null) {
      add(firstSheet, lastSheet, corner(one, false), corner(one, true));
    } else if (firstSheet != OUTSIDE && !word.isEmpty() && !Character.isDigit(word.charAt(0))) {
      name(word, firstSheet);
    }
  }

  private static boolean sameKind(Matcher one, Matcher other) {
    return (one.group(2) == null) == (other.group(2) == null)
        && (one.group(4) == null) == (other.group(4) == null);
  }

  private void add(int firstSheet, int lastSheet, Corner first, Corner last) {
    if (firstSheet != OUTSIDE && first != null && last != null) {
      areas.add(new Reference(firstSheet, lastSheet, first, last));
    }
  }

  /** A missing column or row is the sheet's first or last. In {@code $5} the sign is the row's. */
  private Corner corner(Matcher bound, boolean last) {
    boolean hasColumn = bound.group(2) != null;
    boolean hasRow = bound.group(4) != null;
    int c = last ? CellRef.COLUMNS - 1 : 0;
    int r = last ? CellRef.ROWS - 1 : 0;
    if (hasColumn) {
      c = CellRef.column(CellRef.cell(bound.group(2) + "1"));
    }
    if (hasRow) {
      r = Integer.parseInt(bound.group(4)) - 1;
    }
    if (c < 0 || c >= CellRef.COLUMNS || r < 0 || r >= CellRef.ROWS) {
      return null;
    }
    boolean columnMoves = hasColumn && bound.group(1).isEmpty();
    boolean rowMoves =
        hasRow && bound.group(3).isEmpty() && (hasColumn || bound.group(1).isEmpty());
    return new Corner(rowMoves ? r - row : r, rowMoves, columnMoves ? c - column : c, columnMoves);
  }

  private void name(String name, int qualifier) {
    names.add(name.toLowerCase(Locale.ROOT));
    Needs behind = vocabulary.name(qualifier >= 0 ? qualifier : sheet, name);
    if (behind != null) {
      areas.addAll(behind.areas());
      names.addAll(behind.names());
    } else if (vocabulary.table(name) != null) {
      table(name, "");
    }
  }

  private void table(String name, String inside) {
    Vocabulary.PlacedTable table = vocabulary.table(name);
    if (table != null) {
      areas.add(TableReference.resolve(table, inside));
    }
  }

  private char peek() {
    return at < text.length() ? text.charAt(at) : 0;
  }

  private boolean take(char c) {
    if (peek() == c) {
      at++;
      return true;
    }
    return false;
  }

  private String word() {
    int start = at;
    while (at < text.length() && FilledDown.inWord(text.charAt(at))) {
      at++;
    }
    return text.substring(start, at);
  }

  /** What stands between two marks; a doubled mark inside is one. */
  private String quoted(char mark) {
    StringBuilder inside = new StringBuilder();
    for (at++; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c == mark) {
        at++;
        if (peek() != mark) {
          return inside.toString();
        }
      }
      inside.append(c);
    }
    return inside.toString();
  }

  /** What stands between this bracket and its partner; an apostrophe takes the next as it is. */
  private String bracketed() {
    int start = at + 1;
    int open = 0;
    while (at < text.length()) {
      char c = text.charAt(at++);
      if (c == '\'') {
        at++;
      } else if (c == '[') {
        open++;
      } else if (c == ']' && --open == 0) {
        return text.substring(start, at - 1);
      }
    }
    at = text.length();
    return text.substring(Math.min(start, at));
  }
}
