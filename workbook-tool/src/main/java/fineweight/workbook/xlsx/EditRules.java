package fineweight.workbook.xlsx;

import fineweight.workbook.ColumnEdit;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.SheetChart;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.WorkbookEdit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What a program must not ask for. */
final class EditRules {
  private static final int LONGEST_NAME = 31;

  private EditRules() {}

  /**
   * @throws IllegalArgumentException if the edit makes no sense
   */
  static void check(WorkbookEdit edit) {
    Set<String> columns = new HashSet<>();
    for (SheetEdit sheet : edit.sheets()) {
      require(sheet.headerRow() >= 0 && sheet.firstRow() >= 0, "a row is negative");
      for (ColumnEdit column : sheet.columns()) {
        require(column.column() >= 0, "column is negative");
        requireNew(columns, sheet.sheet(), column.column());
      }
    }
    Set<String> lengthened = new HashSet<>();
    for (RowsEdit rows : edit.rows()) {
      boolean alone = columns.stream().noneMatch(c -> c.startsWith(key(rows.sheet()) + "!"));
      require(alone && lengthened.add(key(rows.sheet())), "rows: a sheet is named twice");
    }
    for (WorkbookEdit.ColumnPlace place : edit.removals().columns()) {
      require(place.column() >= 0 && place.headerRow() >= 0, "removals: a place is negative");
      requireNew(columns, place.sheet(), place.column());
    }
    Set<String> names = new HashSet<>();
    for (SheetDraft draft : edit.drafts()) {
      check(draft.name());
      require(names.add(key(draft.name())), "drafts: two are named " + draft.name());
    }
    edit.drafts().forEach(draft -> checkCharts(draft, edit.drafts()));
    for (String gone : edit.removals().sheets()) {
      require(!names.contains(key(gone)), "removals: a draft is named " + gone);
    }
  }

  private static void checkCharts(SheetDraft draft, List<SheetDraft> drafts) {
    Set<String> names = new HashSet<>();
    for (SheetChart chart : draft.charts()) {
      require(names.add(chart.name()), "charts: two are named " + chart.name());
      List<String> sheets = new ArrayList<>(List.of(chart.categories().sheet()));
      chart
          .series()
          .forEach(each -> sheets.addAll(List.of(each.name().sheet(), each.values().sheet())));
      for (String sheet : sheets) {
        boolean drafted = drafts.stream().anyMatch(each -> each.name().equals(sheet));
        require(drafted, "charts: no draft is named " + sheet);
      }
    }
  }

  private static String key(String sheet) {
    return sheet.toLowerCase(Locale.ROOT);
  }

  private static void requireNew(Set<String> columns, String sheet, int column) {
    require(columns.add(key(sheet) + "!" + column), "columns: number " + column + " stands twice");
  }

  private static void check(String name) {
    boolean fits =
        !name.isBlank()
            && name.length() <= LONGEST_NAME
            && name.chars().noneMatch(c -> ":\\/?*[]".indexOf(c) >= 0)
            && !name.startsWith("'")
            && !name.endsWith("'");
    require(fits, "drafts: a sheet cannot be named " + name);
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new IllegalArgumentException(otherwise);
    }
  }
}
