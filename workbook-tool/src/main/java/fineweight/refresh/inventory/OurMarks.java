package fineweight.refresh.inventory;

import fineweight.column.CalculatedColumn;
import fineweight.workbook.CellPlace;
import fineweight.workbook.NamedCell;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The hidden names by which we know our columns and sheets again, wherever their owner has moved
 * them. Immutable.
 *
 * @param columns the heading cell of each of our columns
 * @param sheets the names of our sheets by their purpose
 * @param values single cells of ours, such as the price of silver, by the name's end
 */
public record OurMarks(
    Map<CalculatedColumn, CellPlace> columns,
    Map<String, String> sheets,
    Map<String, CellPlace> values) {
  public static final String PREFIX = "Fineweight_";

  /** Behind a heading of ours that the owner has too. */
  public static final String BEHIND_HEADING = " (Fineweight)";

  private static final String COLUMN = PREFIX + "column_";
  private static final String SHEET = PREFIX + "sheet_";

  public static OurMarks read(List<NamedCell> names) {
    Map<CalculatedColumn, CellPlace> columns = new EnumMap<>(CalculatedColumn.class);
    Map<String, String> sheets = new HashMap<>();
    Map<String, CellPlace> values = new HashMap<>();
    for (NamedCell name : names) {
      Optional<CellPlace> place = SheetReference.parse(name.refersTo());
      if (place.isEmpty() || !startsWith(name.name(), PREFIX)) {
        continue;
      }
      if (startsWith(name.name(), COLUMN)) {
        CalculatedColumn.ofCode(name.name().substring(COLUMN.length()).toLowerCase(Locale.ROOT))
            .ifPresent(column -> columns.put(column, place.get()));
      } else if (startsWith(name.name(), SHEET)) {
        sheets.put(
            name.name().substring(SHEET.length()).toLowerCase(Locale.ROOT), place.get().sheet());
      } else {
        values.put(name.name().substring(PREFIX.length()), place.get());
      }
    }
    return new OurMarks(columns, sheets, values);
  }

  /** Offices keep the case of a name but do not look at it. */
  private static boolean startsWith(String name, String prefix) {
    return name.regionMatches(true, 0, prefix, 0, prefix.length());
  }

  public static NamedCell column(CalculatedColumn column, CellPlace heading) {
    return new NamedCell(COLUMN + column.code(), SheetReference.of(heading), true);
  }

  public static NamedCell sheet(String purpose, String sheet) {
    return new NamedCell(SHEET + purpose, SheetReference.of(new CellPlace(sheet, 0, 0)), true);
  }

  /** Every name of ours in a workbook, for taking all out. */
  public static List<String> allNames(List<NamedCell> names) {
    return names.stream().map(NamedCell::name).filter(name -> startsWith(name, PREFIX)).toList();
  }

  public boolean isOurs(String sheet) {
    return sheets.containsValue(sheet);
  }

  /** Our columns in a sheet, from 0. */
  public Set<Integer> columnsIn(String sheet) {
    Set<Integer> places = new HashSet<>();
    columns.values().stream()
        .filter(place -> place.sheet().equals(sheet))
        .forEach(place -> places.add(place.column()));
    return places;
  }
}
