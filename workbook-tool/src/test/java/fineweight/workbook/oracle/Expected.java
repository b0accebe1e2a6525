package fineweight.workbook.oracle;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellPlace;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.NamedCell;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.oracle.parts.Places.Area;
import fineweight.workbook.oracle.parts.XmlElement;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What an edit was allowed to touch, as its order and its dry run say.
 *
 * @param areas the cells that belong to us
 * @param sheets our own sheets, lower case
 * @param names our own defined names, lower case
 * @param listed the places of the dry run
 * @param exact whether every cell that changed must stand in the list and the other way round
 */
public record Expected(
    List<Area> areas, Set<String> sheets, Set<String> names, Set<CellPlace> listed, boolean exact) {

  /** Nothing at all may have changed, formulas' results of {@code stale} places excepted. */
  public static Expected backAgain(WorkbookEdit edit, Collection<CellPlace> stale) {
    return new Expected(List.of(), Set.of(), names(edit), Set.copyOf(stale), false);
  }

  public static Expected untouched() {
    return new Expected(List.of(), Set.of(), Set.of(), Set.of(), true);
  }

  public static Expected of(WorkbookEdit edit, Collection<CellChange> changes) {
    List<Area> areas = new ArrayList<>();
    for (SheetEdit sheet : edit.sheets()) {
      for (ColumnEdit column : sheet.columns()) {
        areas.add(single(sheet.sheet(), sheet.headerRow(), column.column()));
        areas.add(
            new Area(
                sheet.sheet(),
                sheet.firstRow(),
                column.column(),
                sheet.lastRow(),
                column.column()));
      }
    }
    for (RowsEdit rows : edit.rows()) {
      areas.add(
          new Area(
              rows.sheet(),
              rows.lastRow() + 1,
              rows.firstColumn(),
              rows.newLastRow(),
              rows.lastColumn()));
      rows.corrections()
          .forEach(
              (row, cells) -> cells.keySet().forEach(c -> areas.add(single(rows.sheet(), row, c))));
    }
    for (WorkbookEdit.ColumnPlace gone : edit.removals().columns()) {
      areas.add(
          new Area(gone.sheet(), gone.headerRow(), gone.column(), Area.LAST_ROW, gone.column()));
    }
    Set<String> sheets =
        edit.drafts().stream().map(SheetDraft::name).map(Expected::lower).collect(toSet());
    edit.removals().sheets().forEach(name -> sheets.add(lower(name)));
    Set<CellPlace> listed =
        changes.stream()
            .map(CellChange::place)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return new Expected(areas, sheets, names(edit), listed, true);
  }

  private static java.util.stream.Collector<String, ?, Set<String>> toSet() {
    return Collectors.toCollection(TreeSet::new);
  }

  private static Area single(String sheet, int row, int column) {
    return new Area(sheet, row, column, row, column);
  }

  private static Set<String> names(WorkbookEdit edit) {
    Set<String> names =
        edit.names().stream().map(NamedCell::name).map(Expected::lower).collect(toSet());
    edit.removals().names().forEach(name -> names.add(lower(name)));
    return names;
  }

  static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  boolean owns(CellPlace place) {
    return sheets.contains(lower(place.sheet()))
        || areas.stream().anyMatch(each -> each.contains(place));
  }

  boolean ownsSheet(String sheet) {
    return sheets.contains(lower(sheet));
  }

  boolean ownsName(XmlElement definedName) {
    return names.contains(lower(definedName.get("name"))) || repeatedRows(definedName);
  }

  /** The rows that a sheet of ours begins every printed page with. */
  private boolean repeatedRows(XmlElement definedName) {
    String text = definedName.allText().strip();
    int end = Math.max(0, text.lastIndexOf('!'));
    return definedName.get("name").equals("_xlnm.Print_Titles")
        && ownsSheet(text.substring(0, end).replaceAll("^'|'$", "").replace("''", "'"));
  }

  /** Whether the column (from 0) of the sheet is one that we put in or take out. */
  boolean ownsColumn(String sheet, int column) {
    return areas.stream()
        .anyMatch(
            each ->
                each.sheet().equalsIgnoreCase(sheet)
                    && column >= each.firstColumn()
                    && column <= each.lastColumn());
  }

  /** Whether the edit has any business with the sheet. */
  boolean touches(String sheet) {
    return areas.stream().anyMatch(each -> each.sheet().equalsIgnoreCase(sheet))
        || listed.stream().anyMatch(each -> each.sheet().equalsIgnoreCase(sheet));
  }

  /** Columns of ours in a sheet, from 0. */
  Set<Integer> columns(String sheet) {
    return areas.stream()
        .filter(each -> each.sheet().equalsIgnoreCase(sheet))
        .map(Area::firstColumn)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
