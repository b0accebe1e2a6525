package fineweight.workbook.xlsx;

import fineweight.workbook.CellPlace;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.part.Relationships;
import fineweight.workbook.xlsx.part.TablePart;
import fineweight.workbook.xlsx.xml.ByteEdits;
import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.Markup;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The table objects of a sheet whose list gets more rows.
 *
 * @param all as they will be
 * @param parts those that change, by part
 */
record LongerTables(List<TablePart> all, Map<String, byte[]> parts) {

  /**
   * @throws WorkbookRefusal if a totals row or another table stands in the way
   */
  static LongerTables of(OpenedPackage source, OpenedSheet sheet, RowsEdit edit)
      throws IOException, WorkbookRefusal {
    List<TablePart> all = new ArrayList<>();
    Map<String, byte[]> parts = new LinkedHashMap<>();
    for (String part : tableParts(source, sheet)) {
      Markup markup = markup(source, part);
      TablePart table = TablePart.read(markup);
      refuse(table.table(), edit);
      Area area = table.table().area();
      if (AddedRows.holdsList(table.table(), edit) && area.lastRow() < edit.newLastRow()) {
        byte[] longer = longer(markup, area, edit.newLastRow());
        parts.put(source.zip().spelling(part), longer);
        all.add(TablePart.read(Markup.of(part, longer)));
      } else {
        all.add(table);
      }
    }
    return new LongerTables(List.copyOf(all), parts);
  }

  private static List<String> tableParts(OpenedPackage source, OpenedSheet sheet)
      throws IOException {
    String relations = Relationships.partOf(sheet.entry().part());
    if (sheet.facts().tableRelations().isEmpty() || !source.zip().has(relations)) {
      return List.of();
    }
    Relationships targets = new Relationships(sheet.entry().part(), markup(source, relations));
    return sheet.facts().tableRelations().stream()
        .flatMap(id -> targets.byId(id).stream())
        .map(Relationships.Target::part)
        .filter(source.zip()::has)
        .toList();
  }

  private static Markup markup(OpenedPackage source, String part) throws IOException {
    try (InputStream in = source.zip().xml(part)) {
      return Markup.read(part, in);
    }
  }

  private static void refuse(SheetLayout.Table table, RowsEdit edit) throws WorkbookRefusal {
    Area area = table.area();
    boolean beside =
        area.lastColumn() < edit.firstColumn() || area.firstColumn() > edit.lastColumn();
    if (beside || area.lastRow() <= edit.lastRow() || area.firstRow() > edit.newLastRow()) {
      return;
    }
    boolean holdsList = AddedRows.holdsList(table, edit);
    if (!holdsList) {
      throw edit.refusal("the table \"" + table.name() + "\" stands there");
    }
    if (area.lastRow() - table.totalsRows() < edit.newLastRow() && table.totalsRows() > 0) {
      throw edit.refusal(
          "row %d is the totals row of the table \"%s\""
              .formatted(area.lastRow() - table.totalsRows() + 2, table.name()));
    }
  }

  private static byte[] longer(Markup markup, Area area, int lastRow) {
    ByteEdits edits = new ByteEdits(markup);
    Element root = markup.root();
    edits.setAttribute(root, "ref", reference(area, lastRow));
    Element filter = root.child("autoFilter").orElse(null);
    Area filtered = filter == null ? null : CellRef.area(filter.get("ref"));
    if (filtered != null && filtered.lastRow() == area.lastRow()) {
      edits.setAttribute(filter, "ref", reference(filtered, lastRow));
    }
    return edits.apply();
  }

  private static String reference(Area area, int lastRow) {
    return CellPlace.letters(area.firstColumn())
        + (area.firstRow() + 1)
        + ":"
        + CellPlace.letters(area.lastColumn())
        + (lastRow + 1);
  }
}
