package fineweight.workbook.xlsx.formula;

import fineweight.workbook.xlsx.part.TablePart;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** The sheets, tables and defined names that a formula may speak of. Case does not matter. */
public final class Vocabulary {
  private static final int UNKNOWN = -2;

  private final Map<String, Integer> sheets = new HashMap<>();
  private final Map<String, PlacedTable> tables = new HashMap<>();
  private final Map<String, String> names = new HashMap<>();
  private final Map<String, Needs> behind = new HashMap<>();

  /**
   * @param sheet by number
   */
  record PlacedTable(int sheet, TablePart part) {}

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** Numbers are given in order, from 0. */
  public int addSheet(String name) {
    return sheets.computeIfAbsent(key(name), n -> sheets.size());
  }

  public int sheetCount() {
    return sheets.size();
  }

  public void addTable(int sheet, TablePart table) {
    tables.put(key(table.table().name()), new PlacedTable(sheet, table));
  }

  /**
   * @param sheet the sheet that knows the name; -1 for the whole workbook
   */
  public void addName(int sheet, String name, String refersTo) {
    names.put(sheet + "!" + key(name), refersTo);
  }

  /** A number below 0 if there is no such sheet. */
  int sheet(String name) {
    return sheets.getOrDefault(key(name), UNKNOWN);
  }

  /** Null if there is none. */
  PlacedTable table(String name) {
    return tables.get(key(name));
  }

  /**
   * What a name looks at, as seen from a sheet; null if there is no such name. Each name is
   * followed once: names that speak of each other would else never come to an end.
   */
  Needs name(int sheet, String name) {
    String own = sheet + "!" + key(name);
    String place = names.containsKey(own) ? own : "-1!" + key(name);
    String text = names.get(place);
    if (text == null) {
      return null;
    }
    Needs known = behind.putIfAbsent(place, Needs.NONE);
    if (known == null) {
      known = FormulaReader.read(this, text, sheet, 0, 0);
      behind.put(place, known);
    }
    return known;
  }
}
