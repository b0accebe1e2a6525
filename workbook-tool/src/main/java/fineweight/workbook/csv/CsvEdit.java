package fineweight.workbook.csv;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.Workbook.UsedArea;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.ColumnPlace;
import fineweight.workbook.WorkbookRefusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/** What an edit does to the lines of a text table. */
final class CsvEdit {
  private final List<SheetEdit> edits;
  private final List<ColumnPlace> removals;
  private final List<RowsEdit> rows;
  private final FieldStyle style;
  private final int usedWidth;
  private final int cutFrom;
  private boolean modelQuoted;

  /**
   * @throws IllegalArgumentException if the edit names a sheet: a text table has none
   */
  CsvEdit(WorkbookEdit edit, UsedArea used, FieldStyle style) {
    this.edits = edit.sheets();
    this.removals = edit.removals().columns();
    this.rows = edit.rows();
    this.style = style;
    this.usedWidth = used.lastColumn() + 1;
    this.cutFrom = cutFrom();
    edits.forEach(one -> CsvWorkbook.requireTheTable(one.sheet()));
    removals.forEach(one -> CsvWorkbook.requireTheTable(one.sheet()));
    rows.forEach(one -> CsvWorkbook.requireTheTable(one.sheet()));
  }

  /** The first of the removed columns that have nothing to keep on their right. */
  private int cutFrom() {
    TreeSet<Integer> kept = new TreeSet<>();
    edits.forEach(edit -> edit.columns().forEach(column -> kept.add(column.column())));
    for (int column = 0; column < usedWidth; column++) {
      int one = column;
      if (removals.stream().noneMatch(removal -> removal.column() == one)) {
        kept.add(column);
      }
    }
    return kept.isEmpty() ? 0 : kept.last() + 1;
  }

  /** The last row that gets a content; -1 if none. */
  int lastRow() {
    return edits.stream()
        .filter(edit -> !edit.columns().isEmpty())
        .mapToInt(SheetEdit::lastRow)
        .max()
        .orElse(-1);
  }

  /** The last row that is put under the list; -1 if none is. */
  int newLastRow() {
    return rows.stream()
        .filter(one -> !one.rows().isEmpty())
        .mapToInt(RowsEdit::newLastRow)
        .max()
        .orElse(-1);
  }

  /**
   * Refuses to write over what the owner has there.
   *
   * @throws WorkbookRefusal if the line is not free for a new row
   */
  void requireFree(Line line) throws WorkbookRefusal {
    for (RowsEdit one : rows) {
      for (int column = one.firstColumn(); column <= one.lastColumn(); column++) {
        boolean isNew = line.row() > one.lastRow() && line.row() <= one.newLastRow();
        CellContent content = isNew ? one.wanted(line.row(), column) : null;
        String wanted = content == null ? "" : style.text(content);
        String there = line.text(column);
        if (isNew && !there.isEmpty() && !there.equals(wanted)) {
          throw one.refusal(
              "\"%s\" stands in cell %s".formatted(there, new CellPlace("", line.row(), column)));
        }
      }
    }
  }

  /** The line's fields after the edit, each change told. Lines must come from the top. */
  List<Field> apply(Line line, Consumer<CellChange> changes) {
    NavigableMap<Integer, String> wanted = wanted(line.row());
    boolean isNew = isNew(line.row());
    boolean allQuoted =
        isNew && line.isBlank() ? modelQuoted : line.fields().stream().allMatch(Field::quoted);
    modelQuoted = allQuoted;
    if (wanted.isEmpty()) {
      return line.fields();
    }
    List<Field> fields = new ArrayList<>(line.fields());
    if (isNew && line.isBlank()) {
      fields.clear();
      pad(fields, usedWidth, allQuoted);
    }
    pad(fields, width(line, wanted), allQuoted);
    wanted.forEach(
        (column, text) -> {
          String before = line.text(column);
          if (!before.equals(text)) {
            fields.set(column, style.field(text, allQuoted));
            changes.accept(new CellChange(new CellPlace("", line.row(), column), before, text));
          }
        });
    return isCut(line) ? fields.subList(0, Math.min(cutFrom, fields.size())) : fields;
  }

  private boolean isNew(int row) {
    return rows.stream().anyMatch(one -> row > one.lastRow() && row <= one.newLastRow());
  }

  private boolean isCut(Line line) {
    return cutFrom < usedWidth
        && removals.stream()
            .anyMatch(one -> one.column() >= cutFrom && line.row() >= one.headerRow());
  }

  /**
   * As wide as the line was or its last content needs; a line that filled the table's width fills
   * the new one. A blank line stays blank.
   */
  private int width(Line line, NavigableMap<Integer, String> wanted) {
    int width = line.fields().size();
    for (Map.Entry<Integer, String> one : wanted.descendingMap().entrySet()) {
      boolean full = !line.isBlank() && line.fields().size() >= usedWidth;
      boolean needed = full || !one.getValue().isEmpty();
      if (needed && !isRemoved(one.getKey())) {
        return Math.max(width, one.getKey() + 1);
      }
    }
    return width;
  }

  private boolean isRemoved(int column) {
    return removals.stream().anyMatch(removal -> removal.column() == column);
  }

  private void pad(List<Field> fields, int width, boolean allQuoted) {
    while (fields.size() < width) {
      fields.add(style.field("", allQuoted));
    }
  }

  private NavigableMap<Integer, String> wanted(int row) {
    NavigableMap<Integer, String> wanted = new TreeMap<>();
    for (RowsEdit one : rows) {
      for (int column = one.firstColumn(); column <= one.lastColumn(); column++) {
        CellContent content = one.wanted(row, column);
        if (content != null) {
          wanted.put(column, style.text(content));
        }
      }
    }
    for (ColumnPlace removal : removals) {
      if (row >= removal.headerRow()) {
        wanted.put(removal.column(), "");
      }
    }
    for (SheetEdit edit : edits) {
      for (ColumnEdit column : edit.columns()) {
        String text = wanted(edit, column, row);
        if (text != null) {
          wanted.put(column.column(), text);
        }
      }
    }
    return wanted;
  }

  private String wanted(SheetEdit edit, ColumnEdit column, int row) {
    if (row == edit.headerRow() && column.header() != null) {
      return style.harmless(column.header());
    }
    if (row < edit.firstRow() || row > edit.lastRow()) {
      return null;
    }
    CellContent content = column.cells().apply(row);
    return content == null ? null : style.text(content);
  }
}
