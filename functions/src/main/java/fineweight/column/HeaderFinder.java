package fineweight.column;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Finds the row of headings in the first rows of a sheet: the one with the most words that
 * collectors put over columns. A heading may stand in two lines.
 */
public final class HeaderFinder {
  private static final int ROWS_LOOKED_AT = 40;

  /** Headings are short; a long text in a row of short ones is a remark. */
  private static final int LONGEST_HEADING = 60;

  private final Headings headings;

  public HeaderFinder(Headings headings) {
    this.headings = headings;
  }

  /**
   * @param rows the first rows of the sheet, ascending
   * @param ours columns that we put in: they are no input
   * @return empty if no row can be the headings of an inventory
   */
  public Optional<FoundTable> find(List<RowText> rows, Set<Integer> ours) {
    FoundTable best = null;
    RowText above = null;
    for (RowText row : rows) {
      if (row.row() > ROWS_LOOKED_AT) {
        break;
      }
      FoundTable found = read(row, above, ours);
      if (isInventory(found) && (best == null || found.score() > best.score())) {
        best = found;
      }
      above = row;
    }
    return Optional.ofNullable(best).map(table -> settled(table, rows));
  }

  /**
   * The table whose headings are known to stand in a row.
   *
   * @param headerRow from 0
   * @return empty if the row cannot be the headings of an inventory
   */
  public Optional<FoundTable> at(int headerRow, List<RowText> rows, Set<Integer> ours) {
    List<RowText> wanted =
        rows.stream().filter(row -> row.row() == headerRow || row.row() == headerRow - 1).toList();
    return find(wanted, ours)
        .filter(table -> table.headerRow() == headerRow)
        .map(table -> settled(table, rows));
  }

  private FoundTable read(RowText row, RowText above, Set<Integer> ours) {
    Map<Integer, InputColumn> columns = new TreeMap<>();
    Map<Integer, String> words = new TreeMap<>();
    Set<InputColumn> used = EnumSet.noneOf(InputColumn.class);
    Map<Integer, Headings.Match> matches = new TreeMap<>();
    for (Map.Entry<Integer, String> cell : row.cells().entrySet()) {
      if (!ours.contains(cell.getKey()) && cell.getValue().length() <= LONGEST_HEADING) {
        String over = above != null && above.row() == row.row() - 1 ? above.at(cell.getKey()) : "";
        words.put(cell.getKey(), cell.getValue());
        match(cell.getValue(), over).ifPresent(match -> matches.put(cell.getKey(), match));
      }
    }
    int score = 0;
    for (boolean exact : new boolean[] {true, false}) {
      for (Map.Entry<Integer, Headings.Match> entry : matches.entrySet()) {
        InputColumn column = entry.getValue().column();
        boolean several =
            column == InputColumn.NOTES
                || column == InputColumn.DESCRIPTION
                || column == InputColumn.OTHER;
        if (entry.getValue().exact() == exact && (used.add(column) || several)) {
          columns.put(entry.getKey(), column);
          score += column == InputColumn.OTHER ? 1 : exact ? 3 : 2;
        }
      }
    }
    long owners = row.cells().keySet().stream().filter(place -> !ours.contains(place)).count();
    int notUnderstood = (int) owners - matches.size();
    return new FoundTable(row.row(), columns, words, score - notUnderstood);
  }

  private Optional<Headings.Match> match(String heading, String over) {
    Optional<Headings.Match> alone = headings.match(heading);
    boolean twoLines = !over.isBlank() && over.length() <= LONGEST_HEADING / 2;
    if (!twoLines || alone.filter(Headings.Match::exact).isPresent()) {
      return alone;
    }
    Optional<Headings.Match> both = headings.match(over + " " + heading);
    return both.filter(Headings.Match::exact).isPresent() || alone.isEmpty() ? both : alone;
  }

  private static boolean isInventory(FoundTable table) {
    boolean names = table.columns().values().stream().anyMatch(InputColumn::namesCoin);
    boolean dated = table.columns().containsValue(InputColumn.YEAR);
    long meaning =
        table.columns().values().stream().filter(column -> column != InputColumn.OTHER).count();
    boolean list =
        table.headings().size() <= 2 && table.columns().containsValue(InputColumn.DESCRIPTION);
    return (names || dated) && (meaning >= 2 || list);
  }

  /** Headings with two meanings are settled by what stands below them. */
  private FoundTable settled(FoundTable table, List<RowText> rows) {
    FoundTable settled = table;
    for (Map.Entry<Integer, InputColumn> entry : table.columns().entrySet()) {
      int place = entry.getKey();
      Content content = Content.of(rows, table.headerRow(), place);
      settled = settledColumn(settled, place, entry.getValue(), content);
    }
    return settled;
  }

  private FoundTable settledColumn(
      FoundTable table, int place, InputColumn column, Content content) {
    boolean millimetres = column == InputColumn.MINT && content.mostlyNumbers();
    if (millimetres && table.first(InputColumn.DIAMETER).isEmpty()) {
      return table.with(place, InputColumn.DIAMETER);
    }
    boolean words = column == InputColumn.OWN_PRICE && content.mostlyWords();
    if (words && table.first(InputColumn.DENOMINATION).isEmpty()) {
      return table.with(place, InputColumn.DENOMINATION);
    }
    if (column == InputColumn.YEAR && content.mostlyFullDates()) {
      return withOtherYear(table.with(place, InputColumn.DATE_BOUGHT));
    }
    boolean counts = column == InputColumn.KEY && content.repeats();
    if (counts && table.first(InputColumn.COUNT).isEmpty()) {
      return table.with(place, InputColumn.COUNT);
    }
    boolean counted = column == InputColumn.DESCRIPTION && content.mostlyNumbers();
    if (counted) {
      return table.with(
          place, table.first(InputColumn.COUNT).isEmpty() ? InputColumn.COUNT : InputColumn.OTHER);
    }
    boolean saidOnly = column == InputColumn.FINENESS && content.mostlyWords();
    return saidOnly ? table.with(place, InputColumn.METAL) : table;
  }

  /** "Date" beside "Year": the second is the one on the coin. */
  private FoundTable withOtherYear(FoundTable table) {
    return table.headings().entrySet().stream()
        .filter(heading -> !table.columns().containsKey(heading.getKey()))
        .filter(
            heading ->
                headings
                    .match(heading.getValue())
                    .filter(match -> match.column() == InputColumn.YEAR)
                    .isPresent())
        .findFirst()
        .map(heading -> table.with(heading.getKey(), InputColumn.YEAR))
        .orElse(table);
  }

  /** What stands below a heading, counted. */
  private record Content(int filled, int numbers, int fullDates, int different) {
    static Content of(List<RowText> rows, int headerRow, int place) {
      int filled = 0;
      int numbers = 0;
      int fullDates = 0;
      Set<String> different = new HashSet<>();
      for (RowText row : rows) {
        String text = row.row() > headerRow ? row.at(place).strip() : "";
        if (!text.isEmpty()) {
          filled++;
          different.add(text);
          numbers += text.matches("[-+]?[0-9.,]+") ? 1 : 0;
          fullDates +=
              text.matches("\\d{4}-\\d{2}-\\d{2}.*|\\d{1,2}[./-]\\d{1,2}[./-]\\d{2,4}") ? 1 : 0;
        }
      }
      return new Content(filled, numbers, fullDates, different.size());
    }

    /** Small numbers of which many are the same cannot tell one piece from another. */
    boolean repeats() {
      return mostlyNumbers() && different * 10 <= filled * 7;
    }

    boolean mostlyNumbers() {
      return filled > 0 && numbers * 10 >= filled * 8;
    }

    boolean mostlyWords() {
      return filled > 0 && numbers * 10 <= filled * 3;
    }

    boolean mostlyFullDates() {
      return filled > 0 && fullDates * 10 >= filled * 6;
    }
  }
}
