package fineweight.workbook.xlsx.part;

import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.xlsx.xml.DamageException;
import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.Markup;
import java.util.List;

/**
 * A table object.
 *
 * @param columns their names, left to right
 */
public record TablePart(SheetLayout.Table table, List<String> columns) {
  public static TablePart read(Markup markup) {
    Element root = markup.requireRoot("table").root();
    String name = root.get("displayName") == null ? root.get("name") : root.get("displayName");
    Area area = CellRef.area(root.get("ref"));
    if (name == null || area == null) {
      throw new DamageException("part " + markup.part() + " does not say where its table is");
    }
    List<String> columns =
        root.child("tableColumns").stream()
            .flatMap(c -> c.children("tableColumn").stream())
            .map(c -> String.valueOf(c.get("name")))
            .toList();
    return new TablePart(
        new SheetLayout.Table(
            name, area, root.number("headerRowCount", 1), root.number("totalsRowCount", 0)),
        columns);
  }
}
