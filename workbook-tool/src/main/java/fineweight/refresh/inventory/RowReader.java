package fineweight.refresh.inventory;

import fineweight.clue.Dating;
import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.Quantity;
import fineweight.column.Appraisal;
import fineweight.column.Appraiser;
import fineweight.column.CalculatedColumn;
import fineweight.column.InputColumn;
import fineweight.column.RowText;
import fineweight.column.Rows;
import fineweight.workbook.Cell;
import fineweight.workbook.CellPlace;
import fineweight.workbook.CellValue;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Reads the rows of an inventory once, from the top, and appraises each. Rows with the same words
 * share one appraisal.
 */
public final class RowReader {
  private static final int MOST_REMEMBERED = 50_000;

  /** Rows that are appraised in one go, shared by all processors. */
  private static final int TOGETHER = 512;

  /** Fewer are done before other threads have begun. */
  private static final int FEW = 24;

  private static final Pattern SUM =
      Pattern.compile("\\b(SUM|SUBTOTAL|AGGREGATE|COUNT|AVERAGE)[A-Z]*\\(");

  private final Workbook workbook;
  private final Inventory inventory;
  private final Appraiser appraiser;
  private final Answers answers;
  private final Set<Integer> totalsRows = new HashSet<>();
  private final List<ReadRow> rows = new ArrayList<>();
  private final List<BadCell> badCells = new ArrayList<>();
  private final Map<List<Field>, Appraisal> remembered = new LinkedHashMap<>();
  private final Map<List<Field>, Appraisal> fresh = new HashMap<>();
  private final List<Waiting> waiting = new ArrayList<>();

  /**
   * A row that waits to be appraised with others.
   *
   * @param coin whether it may be a coin's, and not a total
   * @param answer the standard that the owner chose; empty for none
   */
  private record Waiting(
      int row,
      boolean coin,
      List<Cell> cells,
      RowText texts,
      List<Field> fields,
      String key,
      String answer) {
    boolean isOpen() {
      return coin && answer.isEmpty();
    }
  }

  public RowReader(Workbook workbook, Inventory inventory, Appraiser appraiser, Answers answers) {
    this.workbook = workbook;
    this.inventory = inventory;
    this.appraiser = appraiser;
    this.answers = answers;
  }

  /**
   * A cell that cannot be used.
   *
   * @param sentence what is wrong and what to do
   */
  public record BadCell(CellPlace place, String sentence) {}

  public List<ReadRow> rows() {
    return rows;
  }

  public List<BadCell> badCells() {
    return badCells;
  }

  /**
   * @param progress is told of every row
   */
  public void read(Progress progress) throws WorkbookRefusal {
    for (SheetLayout.Table table : workbook.layout(inventory.sheet()).tables()) {
      for (int i = 0; i < table.totalsRows(); i++) {
        totalsRows.add(table.area().lastRow() - i);
      }
    }
    Set<Integer> wanted = new HashSet<>(inventory.table().columns().keySet());
    wanted.addAll(inventory.table().headings().keySet());
    Integer key = inventory.ours().get(CalculatedColumn.KEY);
    if (key != null) {
      wanted.add(key);
    }
    Integer share = inventory.ours().get(CalculatedColumn.COST_SHARE);
    if (share != null) {
      wanted.add(share);
    }
    int last = Math.max(workbook.usedArea(inventory.sheet()).lastRow(), 0);
    workbook.read(
        inventory.sheet(),
        wanted::contains,
        Integer.MAX_VALUE,
        cells -> {
          row(cells);
          if (!cells.isEmpty()) {
            progress.at(Progress.Stage.READING, cells.get(0).place().row(), last);
          }
        });
    settle();
  }

  private void row(List<Cell> cells) {
    if (cells.isEmpty()) {
      return;
    }
    int row = cells.get(0).place().row();
    if (row <= inventory.table().headerRow()) {
      return;
    }
    RowText texts = CellTexts.row(ownersCells(cells));
    if (texts.cells().isEmpty()) {
      return;
    }
    boolean coin =
        !totalsRows.contains(row)
            && !isSums(ownersCells(cells))
            && Rows.isCoin(texts, inventory.table());
    String key = key(cells, texts);
    List<Field> fields = Rows.fields(texts, inventory.table());
    waiting.add(new Waiting(row, coin, cells, texts, fields, key, answer(key, texts)));
    if (waiting.size() == TOGETHER) {
      settle();
    }
  }

  /** Takes the rows that wait, in their order. */
  private void settle() {
    List<List<Field>> unknown =
        waiting.stream()
            .filter(Waiting::isOpen)
            .map(Waiting::fields)
            .filter(fields -> !remembered.containsKey(fields))
            .distinct()
            .toList();
    List<Appraisal> found =
        (unknown.size() < FEW ? unknown.stream() : unknown.parallelStream())
            .map(appraiser::appraise)
            .toList();
    for (int i = 0; i < unknown.size(); i++) {
      Map<List<Field>, Appraisal> kept = remembered.size() < MOST_REMEMBERED ? remembered : fresh;
      kept.put(unknown.get(i), found.get(i));
    }
    waiting.forEach(this::take);
    waiting.clear();
    fresh.clear();
  }

  private void take(Waiting waiting) {
    int row = waiting.row();
    if (!waiting.coin()) {
      rows.add(ReadRow.notACoin(row));
      return;
    }
    RowText texts = waiting.texts();
    int before = badCells.size();
    errors(waiting.cells());
    Appraisal appraisal = appraisal(waiting);
    if (Rows.isHeading(texts, inventory.table(), appraisal)) {
      rows.add(ReadRow.notACoin(row));
      return;
    }
    if (badCells.size() == before) {
      impossible(row, appraisal);
    }
    rows.add(
        new ReadRow(
            row,
            appraisal,
            waiting.key(),
            RowMoney.of(texts, inventory.table(), appraisal),
            Fate.of(texts, inventory.table()),
            share(waiting.cells()),
            Keeping.of(texts, inventory.table())));
  }

  /** A row of nothing but the owner's sums is a total, even if no word says so. */
  private static boolean isSums(List<Cell> cells) {
    return cells.stream().allMatch(cell -> cell.formula().isPresent())
        && cells.stream().anyMatch(cell -> SUM.matcher(cell.formula().get()).find());
  }

  private List<Cell> ownersCells(List<Cell> cells) {
    Set<Integer> ours = new HashSet<>(inventory.ours().values());
    List<Cell> kept = new ArrayList<>();
    for (Cell cell : cells) {
      if (!ours.contains(cell.place().column()) && !(cell.value() instanceof CellValue.Blank)) {
        kept.add(cell);
      }
    }
    return kept.isEmpty() ? cells.subList(0, 1) : kept;
  }

  private String answer(String key, RowText texts) {
    String kept = answers.of(key);
    return kept.isEmpty()
        ? inventory.table().first(InputColumn.ANSWER).map(texts::at).map(Answers::idIn).orElse("")
        : kept;
  }

  private Appraisal appraisal(Waiting row) {
    if (!row.answer().isEmpty()) {
      return appraiser.appraise(row.fields(), row.answer());
    }
    Appraisal known = remembered.get(row.fields());
    return known != null ? known : fresh.get(row.fields());
  }

  private void errors(List<Cell> cells) {
    for (Cell cell : cells) {
      InputColumn column = inventory.table().columns().get(cell.place().column());
      boolean used =
          column != null && column.role().filter(role -> role != FieldRole.NOTES).isPresent();
      if (used && cell.value() instanceof CellValue.Error error) {
        badCells.add(
            new BadCell(
                cell.place(),
                "the "
                    + column.words()
                    + " is the error "
                    + error.code()
                    + "; mend the formula or type the value"));
      }
    }
  }

  private void impossible(int row, Appraisal appraisal) {
    if (appraisal.clues().dating().kind() == Dating.Kind.IMPOSSIBLE) {
      badCells.add(
          new BadCell(
              place(row, InputColumn.YEAR),
              "\""
                  + appraisal.clues().dating().words()
                  + "\" is no date that a coin bears; type its year"));
    }
    if (appraisal.clues().quantity().value() instanceof Quantity.Unusable unusable
        && unusable.reason().contains("negative")) {
      badCells.add(
          new BadCell(
              place(row, InputColumn.COUNT), unusable.reason() + "; type the number of pieces"));
    }
  }

  private CellPlace place(int row, InputColumn column) {
    return new CellPlace(inventory.sheet(), row, inventory.table().first(column).orElse(0));
  }

  private Optional<BigDecimal> share(List<Cell> cells) {
    Integer ours = inventory.ours().get(CalculatedColumn.COST_SHARE);
    for (Cell cell : cells) {
      boolean there = ours != null && cell.place().column() == ours;
      if (there && cell.value() instanceof CellValue.Number number) {
        return Optional.of(number.value()).filter(share -> share.signum() >= 0);
      }
    }
    return Optional.empty();
  }

  private String key(List<Cell> cells, RowText texts) {
    Integer ours = inventory.ours().get(CalculatedColumn.KEY);
    if (ours != null) {
      for (Cell cell : cells) {
        if (cell.place().column() == ours) {
          return CellTexts.text(cell.value()).strip();
        }
      }
      return "";
    }
    return Rows.key(texts, inventory.table()).orElse("");
  }

  /** Whether every coin has a number of its own in the collector's column. */
  public boolean hasOwnKeys() {
    if (inventory.ours().containsKey(CalculatedColumn.KEY)
        || inventory.table().first(InputColumn.KEY).isEmpty()) {
      return false;
    }
    Map<String, Integer> seen = new HashMap<>();
    for (ReadRow row : rows) {
      if (row.isCoin() && (row.key().isEmpty() || seen.put(row.key(), row.row()) != null)) {
        return false;
      }
    }
    return true;
  }
}
