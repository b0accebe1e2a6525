package fineweight.entry;

import fineweight.column.Appraiser;
import fineweight.column.FoundTable;
import fineweight.column.InputColumn;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.workbook.Cell;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.CellValue;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The pieces of a lot as rows of an inventory, in the columns that it has. Immutable. */
public final class LotRows {
  private static final double WIDTH = 16;

  private final OpenedInventory list;
  private final Purchase purchase;
  private final List<Map<Integer, CellContent>> rows = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  /**
   * @param words of each piece, in the order they were opened
   * @throws RefreshRefusal if the list has no column that takes words
   */
  public LotRows(
      OpenedInventory list, Purchase purchase, Collection<String> words, Appraiser appraiser)
      throws RefreshRefusal {
    this.list = list;
    this.purchase = purchase;
    Set<Integer> calculated =
        list.columns().stream().filter(list::isCalculated).collect(Collectors.toSet());
    RowComposer composer = new RowComposer(list.table(), appraiser, calculated);
    for (String each : words) {
      composer.compose(each).ifPresent(row -> add(each, row));
    }
    if (rows.size() < words.size()) {
      throw new RefreshRefusal(
          RefreshRefusal.Kind.NO_INVENTORY,
          "the list has no column that takes words; add a heading such as Description or Notes");
    }
    numbers();
    ofLot();
  }

  private void add(String words, RowComposer.Composed row) {
    Map<Integer, CellContent> cells = new HashMap<>();
    row.texts().forEach((column, text) -> cells.put(column, content(column, text)));
    rows.add(cells);
    if (!row.readsTheSame()) {
      remarks.add("The row of \"" + words + "\" may read otherwise in your columns; look at it.");
    }
  }

  /** A number where the column holds numbers; words stay words, whatever they look like. */
  private CellContent content(int column, String text) {
    InputColumn meaning = list.table().columns().get(column);
    boolean words =
        meaning == null || meaning.role().filter(fineweight.clue.FieldRole::isText).isPresent();
    return !words && text.matches("0|[1-9]\\d{0,8}")
        ? new CellContent.Number(new BigDecimal(text))
        : new CellContent.Text(text);
  }

  private Optional<Integer> open(InputColumn column) {
    return list.table().first(column).filter(place -> !list.isCalculated(place));
  }

  /** Goes on counting where the owner's own numbers end. */
  private void numbers() {
    Optional<Integer> place = open(InputColumn.KEY);
    if (place.isEmpty() || list.numbers().areOurs() && !list.isEmpty()) {
      return;
    }
    PieceCounter counter =
        new PieceCounter(list.rows().stream().filter(ReadRow::isCoin).map(ReadRow::key).toList());
    for (Map<Integer, CellContent> row : rows) {
      counter.next().ifPresent(number -> row.put(place.get(), content(place.get(), number)));
    }
  }

  private void ofLot() {
    open(InputColumn.DATE_BOUGHT)
        .ifPresent(place -> rows.forEach(row -> row.put(place, day(place))));
    Optional<Integer> lot = open(InputColumn.LOT);
    if (lot.isPresent() && !purchase.name().isEmpty()) {
      rows.forEach(row -> row.put(lot.get(), content(lot.get(), purchase.name())));
    } else if (!purchase.name().isEmpty()) {
      remarks.add(
          "Your list has no column for lots, so the lot's name is not in it; add a heading Lot.");
    }
    purchase.cost().filter(cost -> !rows.isEmpty()).ifPresent(this::cost);
  }

  private CellContent day(int place) {
    Cell above = list.lastCells().get(place);
    return above != null && above.value() instanceof CellValue.Date
        ? new CellContent.Day(purchase.day())
        : new CellContent.Text(purchase.day().toString());
  }

  /** As people write it: the cost of the whole lot in its first row. */
  private void cost(BigDecimal cost) {
    boolean known =
        list.rows().stream()
            .filter(ReadRow::isCoin)
            .map(ReadRow::money)
            .anyMatch(
                money ->
                    !purchase.name().isEmpty()
                        && money.lot().equalsIgnoreCase(purchase.name())
                        && money.cost().isPresent());
    Optional<Integer> place = open(InputColumn.COST).or(() -> open(InputColumn.COST_ALL));
    if (known) {
      remarks.add("The lot has a cost in your list already; " + cost + " was not put there too.");
    } else if (place.isEmpty()) {
      remarks.add("Your list has no column for the cost, so " + cost + " is not in it.");
    } else {
      rows.get(0).put(place.get(), new CellContent.Number(cost));
    }
  }

  /** What the person should know. */
  public List<String> remarks() {
    return List.copyOf(remarks);
  }

  /** The rows under the last one of the list. */
  public RowsEdit under() {
    return new RowsEdit(
        list.inventory().sheet(),
        list.lastRow(),
        list.columns().first(),
        list.columns().last(),
        rows,
        new TreeMap<>(),
        list.isEmpty());
  }

  /** The rows on a new sheet, under the same headings. */
  public SheetDraft onSheet(String name) {
    FoundTable table = list.table();
    List<Integer> columns = List.copyOf(list.columns());
    List<List<DraftCell>> cells = new ArrayList<>();
    cells.add(
        columns.stream()
            .map(place -> DraftCell.text(table.headings().getOrDefault(place, ""), Kind.HEADER))
            .toList());
    for (Map<Integer, CellContent> row : rows) {
      cells.add(columns.stream().map(place -> drafted(row.get(place))).toList());
    }
    Map<Integer, Double> widths = new HashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      widths.put(i, WIDTH);
    }
    return new SheetDraft(name, false, cells, widths, 1, Map.of());
  }

  private static DraftCell drafted(CellContent content) {
    CellContent kept =
        content instanceof CellContent.Day day
            ? new CellContent.Text(day.value().toString())
            : content == null ? CellContent.EMPTY : content;
    return DraftCell.of(kept, CellLook.GENERAL);
  }
}
