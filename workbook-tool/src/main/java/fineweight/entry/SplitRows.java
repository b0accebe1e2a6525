package fineweight.entry;

import fineweight.column.Appraisal;
import fineweight.column.Appraiser;
import fineweight.column.EachCoin;
import fineweight.column.FoundTable;
import fineweight.column.InputColumn;
import fineweight.column.RowState;
import fineweight.column.RowText;
import fineweight.column.Rows;
import fineweight.identification.Candidate;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.metal.Metal;
import fineweight.refresh.inventory.CellTexts;
import fineweight.refresh.inventory.ReadRow;
import fineweight.standard.CoinStandard;
import fineweight.workbook.Cell;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellValue;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Rows of an inventory that hold several coins of different dates, one row for each coin. The first
 * coin keeps its row, its number and every amount of money; the others come under the list. Only
 * rows are taken whose coins read apart as they read together.
 */
public final class SplitRows {
  /** What belongs to the row as a whole and stays with its first coin. */
  private static final Set<InputColumn> STAYS =
      Set.of(
          InputColumn.KEY,
          InputColumn.COST,
          InputColumn.COST_EACH,
          InputColumn.COST_ALL,
          InputColumn.OWN_PRICE,
          InputColumn.PICTURE,
          InputColumn.CERTIFICATE,
          InputColumn.MASS,
          InputColumn.MASS_IN_WATER,
          InputColumn.SOLD_FOR,
          InputColumn.DATE_SOLD,
          InputColumn.FEES,
          InputColumn.ANSWER);

  private static final int CENTURY = 100;

  private final OpenedInventory list;
  private final Appraiser appraiser;
  private final List<Split> splits = new ArrayList<>();
  private final List<String> leftAlone = new ArrayList<>();
  private final List<Map<Integer, CellContent>> added = new ArrayList<>();
  private final TreeMap<Integer, Map<Integer, CellContent>> corrections = new TreeMap<>();
  private final PieceCounter counter;

  /**
   * A row and what becomes of it.
   *
   * @param row from 0
   * @param words the row's own
   * @param coins the words of each coin; the first keeps the row
   */
  public record Split(int row, String words, List<String> coins) {
    public Split {
      coins = List.copyOf(coins);
    }
  }

  private SplitRows(OpenedInventory list, Appraiser appraiser) {
    this.list = list;
    this.appraiser = appraiser;
    this.counter =
        new PieceCounter(list.rows().stream().filter(ReadRow::isCoin).map(ReadRow::key).toList());
  }

  /** Looks at every row of the list. */
  public static SplitRows of(Workbook workbook, OpenedInventory list, Appraiser appraiser)
      throws WorkbookRefusal {
    SplitRows splitting = new SplitRows(list, appraiser);
    Map<Integer, ReadRow> wanted = new HashMap<>();
    list.rows().stream()
        .filter(ReadRow::isCoin)
        .filter(row -> row.appraisal().clues().dating().years().size() > 1)
        .filter(row -> row.appraisal().pieces().filter(pieces -> pieces > 1).isPresent())
        .forEach(row -> wanted.put(row.row(), row));
    workbook.read(
        list.inventory().sheet(),
        column -> list.table().headings().containsKey(column) || isInput(list, column),
        list.lastRow(),
        cells -> {
          ReadRow row = cells.isEmpty() ? null : wanted.get(cells.get(0).place().row());
          if (row != null) {
            splitting.look(row, cells);
          }
        });
    return splitting;
  }

  private static boolean isInput(OpenedInventory list, int column) {
    return list.table().columns().containsKey(column);
  }

  public List<Split> splits() {
    return List.copyOf(splits);
  }

  /** Rows with several dates that stay as they are, with the reason. */
  public List<String> leftAlone() {
    return List.copyOf(leftAlone);
  }

  /** The new rows under the list, and the first coins in theirs. */
  public RowsEdit edit() {
    return new RowsEdit(
        list.inventory().sheet(),
        list.lastRow(),
        list.columns().first(),
        list.columns().last(),
        added,
        corrections);
  }

  private void look(ReadRow row, List<Cell> cells) {
    List<Integer> years =
        row.appraisal().clues().dating().years().stream()
            .map(year -> inFull(year, row.appraisal()))
            .toList();
    long pieces = row.appraisal().pieces().orElse(1L);
    if (row.gonePieces() > 0) {
      leave(row, "some of it is sold or gone");
    } else if (pieces != years.size()) {
      leave(row, pieces + " pieces, but " + years.size() + " dates");
    } else {
      split(row, cells, years);
    }
  }

  /** Two digits with the century in which the coins were struck, if there is only one. */
  private static int inFull(int year, Appraisal appraisal) {
    if (year >= CENTURY) {
      return year;
    }
    List<CoinStandard> standards = standards(appraisal);
    List<Integer> full =
        Stream.of(1700, 1800, 1900, 2000)
            .map(century -> century + year)
            .filter(
                date -> standards.stream().anyMatch(each -> each.issue().years().contains(date)))
            .toList();
    return full.size() == 1 ? full.get(0) : year;
  }

  private static List<CoinStandard> standards(Appraisal appraisal) {
    if (appraisal.identification() instanceof OneStandard one) {
      return List.of(one.standard());
    }
    return appraisal.identification() instanceof SeveralStandards several
        ? several.candidates().stream().map(Candidate::standard).toList()
        : List.of();
  }

  private void leave(ReadRow row, String reason) {
    leftAlone.add("Row " + (row.row() + 1) + ", " + row.words() + ": " + reason + ".");
  }

  private void split(ReadRow row, List<Cell> cells, List<Integer> years) {
    RowText texts = CellTexts.row(cells);
    for (Cell cell : cells) {
      int place = cell.place().column();
      boolean isWords =
          cell.formula().isEmpty()
              && cell.value() instanceof CellValue.Text
              && list.table().columns().containsKey(place);
      List<String> coins = isWords ? EachCoin.words(texts.at(place), years) : List.of();
      if (!coins.isEmpty() && readTheSame(row, texts, place, coins)) {
        take(row, cells, place, coins);
        return;
      }
    }
    leave(row, "its words do not come apart into coins that read the same");
  }

  private boolean readTheSame(ReadRow row, RowText texts, int place, List<String> coins) {
    for (String words : coins) {
      Map<Integer, String> cells = new HashMap<>(texts.cells());
      cells.put(place, words);
      list.table().all(InputColumn.COUNT).forEach(count -> cells.replace(count, "1"));
      Appraisal alone =
          appraiser.appraise(Rows.fields(new RowText(row.row(), cells), list.table()));
      boolean single =
          alone.pieces().equals(Optional.of(1L)) && alone.clues().dating().years().size() == 1;
      if (!single || alone.state() == RowState.NOT_KNOWN || !fits(row.appraisal(), alone)) {
        return false;
      }
    }
    return true;
  }

  /** One standard for all stays that standard's metal; an open question may be settled. */
  private static boolean fits(Appraisal whole, Appraisal alone) {
    if (!(whole.identification() instanceof OneStandard)) {
      return true;
    }
    for (Metal metal : Metal.values()) {
      BigDecimal each = whole.figures().content().troyOunces(metal);
      if (each.compareTo(alone.figures().content().troyOunces(metal)) != 0) {
        return false;
      }
    }
    return alone.state() == whole.state();
  }

  private void take(ReadRow row, List<Cell> cells, int place, List<String> coins) {
    FoundTable table = list.table();
    Optional<Integer> count = table.first(InputColumn.COUNT);
    Map<Integer, CellContent> first = new HashMap<>();
    first.put(place, new CellContent.Text(coins.get(0)));
    cells.stream()
        .filter(cell -> count.equals(Optional.of(cell.place().column())))
        .filter(cell -> cell.formula().isEmpty())
        .forEach(cell -> first.put(cell.place().column(), one(cell)));
    corrections.put(row.row(), first);
    for (String words : coins.subList(1, coins.size())) {
      Map<Integer, CellContent> further = new HashMap<>();
      for (Cell cell : cells) {
        copied(cell).ifPresent(content -> further.put(cell.place().column(), content));
      }
      further.putAll(first);
      further.put(place, new CellContent.Text(words));
      number(further);
      added.add(further);
    }
    splits.add(new Split(row.row(), row.words(), coins));
  }

  private static CellContent one(Cell cell) {
    return cell.value() instanceof CellValue.Number
        ? new CellContent.Number(BigDecimal.ONE)
        : new CellContent.Text("1");
  }

  /** What a further coin has in common with the first; a number of unknown meaning may be money. */
  private Optional<CellContent> copied(Cell cell) {
    InputColumn meaning =
        list.table().columns().getOrDefault(cell.place().column(), InputColumn.OTHER);
    boolean stays =
        STAYS.contains(meaning)
            || cell.formula().isPresent()
            || !list.columns().contains(cell.place().column());
    if (stays) {
      return Optional.empty();
    }
    if (cell.value() instanceof CellValue.Text text) {
      return Optional.of(new CellContent.Text(text.value()));
    }
    if (cell.value() instanceof CellValue.Date date) {
      return Optional.of(new CellContent.Day(date.value().toLocalDate()));
    }
    return cell.value() instanceof CellValue.Number number && meaning != InputColumn.OTHER
        ? Optional.of(new CellContent.Number(number.value()))
        : Optional.empty();
  }

  private void number(Map<Integer, CellContent> row) {
    Optional<Integer> key =
        list.table().first(InputColumn.KEY).filter(place -> !list.isCalculated(place));
    if (key.isPresent() && !list.numbers().areOurs()) {
      counter.next().ifPresent(next -> row.put(key.get(), numbered(next)));
    }
  }

  private static CellContent numbered(String text) {
    return text.matches("0|[1-9]\\d{0,8}")
        ? new CellContent.Number(new BigDecimal(text))
        : new CellContent.Text(text);
  }
}
