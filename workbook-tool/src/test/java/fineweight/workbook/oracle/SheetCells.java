package fineweight.workbook.oracle;

import fineweight.workbook.CellPlace;
import fineweight.workbook.oracle.parts.PackageParts;
import fineweight.workbook.oracle.parts.XmlElement;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Looks up single cells of a workbook. */
final class SheetCells {
  private static final XmlElement NOTHING = new XmlElement("", "c", Map.of(), "", List.of());

  private final PackageParts parts;
  private final Map<String, Map<String, XmlElement>> sheets = new HashMap<>();

  SheetCells(PackageParts parts) {
    this.parts = parts;
  }

  /** The cell there; one without content if there is none. */
  XmlElement cell(CellPlace place) throws IOException {
    String name = place.sheet().toLowerCase(Locale.ROOT);
    if (!sheets.containsKey(name)) {
      sheets.put(name, read(name));
    }
    String reference = CellPlace.letters(place.column()) + (place.row() + 1);
    return sheets.get(name).getOrDefault(reference, NOTHING);
  }

  private Map<String, XmlElement> read(String name) throws IOException {
    Map<String, XmlElement> cells = new HashMap<>();
    for (PackageParts.Sheet sheet : parts.sheets()) {
      if (sheet.name().toLowerCase(Locale.ROOT).equals(name) && sheet.isTable()) {
        SheetForm.of(parts.tree(sheet.part()), Set.of()).child("sheetData").stream()
            .flatMap(data -> data.all("row").stream())
            .flatMap(row -> row.all("c").stream())
            .forEach(cell -> cells.put(cell.get("r"), cell));
      }
    }
    return cells;
  }
}
