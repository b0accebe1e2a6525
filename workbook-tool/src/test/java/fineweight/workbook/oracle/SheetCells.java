package fineweight.workbook.oracle;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.parts.XmlElement;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Looks up single cells in a worksheet's tree. */
final class SheetCells {
  static final XmlElement NOTHING = new XmlElement("", "c", Map.of(), "", List.of());

  private SheetCells() {}

  static XmlElement cell(XmlElement worksheet, CellPlace place) {
    String row = String.valueOf(place.row() + 1);
    String reference = CellPlace.letters(place.column()) + row;
    return SheetForm.of(worksheet, Set.of()).child("sheetData").stream()
        .flatMap(data -> data.all("row").stream())
        .filter(each -> each.get("r").equals(row))
        .flatMap(each -> each.all("c").stream())
        .filter(each -> each.get("r").equals(reference))
        .findFirst()
        .orElse(NOTHING);
  }
}
