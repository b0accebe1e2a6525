package fineweight.column;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Tells rows about coins from totals, headings within the list and repeated headings: a total is
 * never valued as a coin.
 */
final class RowKind {
  private static final Pattern TOTAL =
      Pattern.compile(
          "(grand |sub-?|lot |page )?-? ?(totals?|subtotals?|sum|sums|summe|summen|gesamt|gesamtsumme"
              + "|zwischensumme|totaal|subtotaal|totale|totali|subtotale|somme|sous-total|suma|totales"
              + "|carried forward|uebertrag|übertrag|i alt|summa|sammanlagt|à reporter)\\b.{0,30}");

  /**
   * Words that begin a total's line only if they are all of it: "Average circulated dime" is a
   * coin.
   */
  private static final Pattern ALONE =
      Pattern.compile("(average|avg|mean|median|balance|count|report)\\W*");

  private static final Pattern FULL_YEAR = Pattern.compile("\\d{4}");

  private RowKind() {}

  static boolean isCoin(RowText row, FoundTable table) {
    if (row.row() <= table.headerRow() || row.cells().isEmpty()) {
      return false;
    }
    return namesSomething(row, table) && !isTotal(row, table) && !repeatsHeadings(row, table);
  }

  private static boolean namesSomething(RowText row, FoundTable table) {
    Set<InputColumn> naming =
        Set.of(
            InputColumn.DESCRIPTION,
            InputColumn.DENOMINATION,
            InputColumn.TYPE,
            InputColumn.VARIETY,
            InputColumn.YEAR,
            InputColumn.COUNTRY);
    boolean named = false;
    for (Map.Entry<Integer, InputColumn> entry : table.columns().entrySet()) {
      named |= naming.contains(entry.getValue()) && !row.at(entry.getKey()).isBlank();
    }
    boolean remarkOnly =
        !named && table.all(InputColumn.NOTES).stream().anyMatch(place -> !row.at(place).isBlank());
    boolean counted =
        table.first(InputColumn.COUNT).map(row::at).filter(text -> !text.isBlank()).isPresent();
    return named || (remarkOnly && counted);
  }

  /** The first words of the row are those of a total. */
  private static boolean isTotal(RowText row, FoundTable table) {
    for (Map.Entry<Integer, String> cell : row.cells().entrySet()) {
      InputColumn column = table.columns().get(cell.getKey());
      String text = cell.getValue().strip().toLowerCase(Locale.ROOT);
      boolean place =
          column == null
              || column.namesCoin()
              || column == InputColumn.COUNTRY
              || column == InputColumn.YEAR
              || column == InputColumn.KEY
              || column == InputColumn.LOT
              || column == InputColumn.NOTES
              || column == InputColumn.MINT;
      if (place
          && (TOTAL.matcher(text).matches() || ALONE.matcher(text).matches())
          && isBareTotal(row, table, text)) {
        return true;
      }
    }
    return false;
  }

  /** "Total" alone or with figures; not a remark about a total beside a dated coin. */
  private static boolean isBareTotal(RowText row, FoundTable table, String text) {
    boolean dated =
        table
            .first(InputColumn.YEAR)
            .map(row::at)
            .filter(year -> FULL_YEAR.matcher(year).find())
            .isPresent();
    boolean denominated =
        table
            .first(InputColumn.DENOMINATION)
            .map(row::at)
            .filter(d -> !d.isBlank() && !d.strip().equalsIgnoreCase(text))
            .isPresent();
    return !(dated && denominated);
  }

  private static boolean repeatsHeadings(RowText row, FoundTable table) {
    long same =
        row.cells().entrySet().stream()
            .filter(cell -> cell.getValue().equals(table.headings().get(cell.getKey())))
            .count();
    return same >= 2 && same * 2 >= row.cells().size();
  }

  /**
   * A heading within the list ("Silver dollars"): one filled cell in a table of several columns.
   */
  static boolean isSingleCell(RowText row, FoundTable table) {
    long meant =
        table.columns().keySet().stream().filter(place -> !row.at(place).isBlank()).count();
    return meant <= 1 && table.columns().size() >= 3;
  }

  /** The text of the row's key, if the table has a column of them. */
  static Optional<String> key(RowText row, FoundTable table) {
    return table
        .first(InputColumn.KEY)
        .map(row::at)
        .map(String::strip)
        .filter(text -> !text.isEmpty());
  }
}
