package fineweight.refresh.own;

import fineweight.column.Headings;
import fineweight.column.RowText;
import fineweight.refresh.inventory.CellTexts;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A list of the collector's own as it stands in a sheet or a file. Immutable.
 *
 * @param place the file and the sheet, for messages
 * @param columns the place of each column, from 0
 * @param headings the headings in lower case by column
 * @param rows the lines below them
 */
record OwnTable(
    String place, Map<String, Integer> columns, Map<String, String> headings, List<RowText> rows) {
  private static final int LAST_HEADING_ROW = 20;

  /** The heading row of a sheet that is such a list. */
  private record Head(int row, Map<String, Integer> columns, Map<String, String> headings) {}

  /** Whether a sheet is such a list by its name and headings, and not an inventory. */
  static boolean isOne(Workbook workbook, String sheet, ListKind kind) throws WorkbookRefusal {
    Optional<Head> head = head(workbook, sheet, kind);
    if (head.isEmpty()) {
      return false;
    }
    boolean told =
        head.get().headings().values().stream().anyMatch(kind::isTold)
            || kind.isNamedIn(sheet.toLowerCase(Locale.ROOT));
    return told && head.get().headings().values().stream().noneMatch(OwnTable::isOfInventory);
  }

  private static boolean isOfInventory(String heading) {
    return Headings.standard()
        .match(heading)
        .filter(Headings.Match::exact)
        .map(match -> match.column().name().toLowerCase(Locale.ROOT).replace('_', ' '))
        .filter(ListKind.INVENTORY_ONLY::contains)
        .isPresent();
  }

  /** The list in a sheet; empty if it lacks the headings. */
  static Optional<OwnTable> read(Workbook workbook, String sheet, ListKind kind)
      throws WorkbookRefusal {
    Optional<Head> head = head(workbook, sheet, kind);
    if (head.isEmpty()) {
      return Optional.empty();
    }
    List<RowText> rows = new ArrayList<>();
    workbook.read(
        sheet,
        column -> true,
        Integer.MAX_VALUE,
        cells -> {
          if (!cells.isEmpty() && cells.get(0).place().row() > head.get().row()) {
            rows.add(CellTexts.row(cells));
          }
        });
    String place = workbook.path() + (sheet.isEmpty() ? "" : ", sheet \"" + sheet + "\"");
    return Optional.of(new OwnTable(place, head.get().columns(), head.get().headings(), rows));
  }

  /** The only list of a file: its first sheet that has the headings. */
  static Optional<OwnTable> read(Workbook file, ListKind kind) throws WorkbookRefusal {
    for (SheetSummary sheet : file.sheets()) {
      Optional<OwnTable> table =
          sheet.isTable() ? read(file, sheet.name(), kind) : Optional.empty();
      if (table.isPresent()) {
        return table;
      }
    }
    return Optional.empty();
  }

  private static Optional<Head> head(Workbook workbook, String sheet, ListKind kind)
      throws WorkbookRefusal {
    List<Head> heads = new ArrayList<>();
    workbook.read(
        sheet,
        column -> true,
        LAST_HEADING_ROW,
        cells -> {
          if (!cells.isEmpty() && heads.isEmpty()) {
            Head head = head(CellTexts.row(cells), kind);
            if (kind.isComplete(head.columns().keySet())) {
              heads.add(head);
            }
          }
        });
    return heads.stream().findFirst();
  }

  private static Head head(RowText row, ListKind kind) {
    Map<String, Integer> columns = new LinkedHashMap<>();
    Map<String, String> headings = new LinkedHashMap<>();
    row.cells()
        .forEach(
            (place, words) -> {
              String heading = normal(words);
              kind.columns()
                  .forEach(
                      (column, pattern) -> {
                        if (pattern.matcher(heading).matches()
                            && columns.putIfAbsent(column, place) == null) {
                          headings.put(column, heading);
                        }
                      });
              headings.putIfAbsent("column " + place, heading);
            });
    return new Head(row.row(), columns, headings);
  }

  private static String normal(String heading) {
    return heading
        .replaceAll("\\([^)]*\\)", " ")
        .replaceAll("\\s+", " ")
        .strip()
        .toLowerCase(Locale.ROOT);
  }

  /** The text of a line in a column; empty if it is blank or there is no such column. */
  String at(RowText line, String column) {
    Integer place = columns.get(column);
    return place == null ? "" : line.at(place).strip();
  }

  /** What stands in the brackets of a column's pattern, such as a currency, in capitals. */
  Optional<String> named(ListKind kind, String column) {
    Pattern pattern = kind.columns().get(column);
    Matcher found = pattern.matcher(headings.getOrDefault(column, ""));
    if (!found.matches()) {
      return Optional.empty();
    }
    for (int i = 1; i <= found.groupCount(); i++) {
      if (found.group(i) != null) {
        return Optional.of(found.group(i).toUpperCase(Locale.ROOT));
      }
    }
    return Optional.empty();
  }

  /** A sentence about a line. */
  String remark(RowText line, String sentence) {
    return place + ", row " + (line.row() + 1) + ": " + sentence + ". The line is left out.";
  }
}
