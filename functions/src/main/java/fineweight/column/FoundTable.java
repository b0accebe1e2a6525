package fineweight.column;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Where the inventory stands in a sheet and what its columns hold. Immutable.
 *
 * @param headerRow from 0
 * @param columns by column from 0
 * @param headings the headings' own words by column, all that are not blank
 * @param score how sure the finding is: more headings understood, more points
 */
public record FoundTable(
    int headerRow, Map<Integer, InputColumn> columns, Map<Integer, String> headings, int score) {
  public FoundTable {
    columns = Collections.unmodifiableMap(new TreeMap<>(columns));
    headings = Collections.unmodifiableMap(new TreeMap<>(headings));
  }

  /** The first column with that content. */
  public Optional<Integer> first(InputColumn wanted) {
    return columns.entrySet().stream()
        .filter(entry -> entry.getValue() == wanted)
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** All columns with that content, from the left. */
  public List<Integer> all(InputColumn wanted) {
    List<Integer> places = new ArrayList<>();
    columns.forEach(
        (place, column) -> {
          if (column == wanted) {
            places.add(place);
          }
        });
    return places;
  }

  /** The same table with one column meant otherwise. */
  public FoundTable with(int place, InputColumn column) {
    Map<Integer, InputColumn> changed = new TreeMap<>(columns);
    changed.put(place, column);
    return new FoundTable(headerRow, changed, headings, score);
  }
}
