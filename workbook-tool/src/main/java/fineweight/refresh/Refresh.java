package fineweight.refresh;

import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.column.Appraiser;
import fineweight.column.CalculatedColumn;
import fineweight.column.InputColumn;
import fineweight.column.RowState;
import fineweight.identification.CoinIdentifier;
import fineweight.refresh.column.ColumnPlan;
import fineweight.refresh.column.Filling;
import fineweight.refresh.column.MoneyCells;
import fineweight.refresh.column.WatchedColumns;
import fineweight.refresh.inventory.Answers;
import fineweight.refresh.inventory.Inventory;
import fineweight.refresh.inventory.InventoryFinder;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.Progress;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.refresh.inventory.RowReader;
import fineweight.refresh.own.OwnLists;
import fineweight.refresh.own.OwnTerms;
import fineweight.refresh.sheet.TypeSetSheet;
import fineweight.refresh.worth.Spot;
import fineweight.refresh.worth.Worths;
import fineweight.toolpack.SheetFunctionPack;
import fineweight.typeset.TypeSet;
import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import fineweight.workbook.FileFormat;
import fineweight.workbook.NamedCell;
import fineweight.workbook.Recalculation;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntFunction;

/** One run over one workbook: read, appraise, and either tell what would change or change it. */
public final class Refresh {
  /** So many headings understood make an inventory even without a coin. */
  private static final int FEWEST_OF_A_NEW_LIST = 4;

  private final Workbook workbook;
  private final RefreshWishes wishes;
  private final Progress progress;

  private Refresh(Workbook workbook, RefreshWishes wishes, Progress progress) {
    this.workbook = workbook;
    this.wishes = wishes;
    this.progress = progress;
  }

  /** All that a run would do, worked out but not done. */
  private record Prepared(Reckoning reckoning, WorkbookEdit edit, Set<CellPlace> left) {}

  /**
   * @param changes takes each cell that would change
   * @return what was understood; nothing is written, and prices are not needed
   */
  public static RefreshReport preview(
      Workbook workbook, RefreshWishes wishes, Consumer<CellChange> changes, Progress progress)
      throws WorkbookRefusal, RefreshRefusal {
    Prepared prepared = new Refresh(workbook, wishes, progress).prepare(false);
    long[] count = new long[1];
    workbook.preview(
        prepared.edit(),
        change -> {
          count[0]++;
          changes.accept(change);
        });
    return new Reporting(prepared.reckoning(), prepared.left()).report(count[0], Optional.empty());
  }

  /** Fills the workbook, unseen. */
  public static RefreshReport run(Workbook workbook, RefreshWishes wishes)
      throws WorkbookRefusal, RefreshRefusal {
    return run(workbook, wishes, Progress.UNSEEN);
  }

  /** Fills the workbook. */
  public static RefreshReport run(Workbook workbook, RefreshWishes wishes, Progress progress)
      throws WorkbookRefusal, RefreshRefusal {
    Prepared prepared = new Refresh(workbook, wishes, progress).prepare(true);
    Unfit.refuseProtected(workbook, prepared.reckoning().inventory().sheet(), wishes);
    Workbook.SaveResult saved = workbook.save(prepared.edit());
    return new Reporting(prepared.reckoning(), prepared.left())
        .report(saved.changedCells(), Optional.ofNullable(saved.backup()));
  }

  /** Everything that is to be known of the pieces, without a word of what shall stand where. */
  static Reckoning reckoning(
      Workbook workbook, RefreshWishes wishes, boolean pricesNeeded, Progress progress)
      throws WorkbookRefusal, RefreshRefusal {
    OurMarks marks = OurMarks.read(workbook.names());
    return new Refresh(workbook, wishes, progress)
        .reckoning(marks, answers(workbook, marks, wishes), pricesNeeded);
  }

  private static Answers answers(Workbook workbook, OurMarks marks, RefreshWishes wishes)
      throws WorkbookRefusal {
    return Answers.read(workbook, marks).with(wishes.answers());
  }

  private Prepared prepare(boolean pricesNeeded) throws WorkbookRefusal, RefreshRefusal {
    Unfit.refuseCallsInText(workbook, wishes);
    OurMarks marks = OurMarks.read(workbook.names());
    Answers answers = answers(workbook, marks, wishes);
    Reckoning reckoning = reckoning(marks, answers, pricesNeeded);
    Set<CellPlace> left = new LinkedHashSet<>();
    Recalculation called = new Recalculation(SheetFunctionPack.calculator(), left::add);
    return new Prepared(reckoning, edit(reckoning, answers).with(called), left);
  }

  private Reckoning reckoning(OurMarks marks, Answers answers, boolean pricesNeeded)
      throws WorkbookRefusal, RefreshRefusal {
    OwnLists lists = OwnLists.find(workbook, marks, wishes.further().lists());
    Inventory inventory = new InventoryFinder(workbook, marks, lists.sheets()).find(wishes.sheet());
    Spot spot = Spot.of(workbook, marks, wishes.prices(), wishes.currencyGiven(), wishes.wear());
    if (pricesNeeded && spot.prices().prices().isEmpty()) {
      throw new RefreshRefusal(
          RefreshRefusal.Kind.NO_PRICES,
          "No price is given: add --spot XAG=30.00 --spot XAU=2500.00 (price of one troy ounce), or --spot-file prices.json.");
    }
    Appraiser appraiser = appraiser(spot);
    RowReader reader = new RowReader(workbook, inventory, appraiser, answers);
    reader.read(progress);
    refuseBadCells(reader);
    refuseNoCoins(inventory, reader);
    OwnTerms own = lists.terms(spot.prices(), appraiser, wishes.standards());
    List<String> remarks = new ArrayList<>(own.remarks());
    Optional<TypeSet> set = set(marks, lists, appraiser, remarks);
    Worths worths = new Worths(spot, own.remarking(remarks));
    return Reckoning.of(workbook, marks, inventory, reader, worths, set, wishes);
  }

  /** The set asked for now, or the one asked for before, or a sheet of its owner's. */
  private Optional<TypeSet> set(
      OurMarks marks, OwnLists lists, Appraiser appraiser, List<String> remarks)
      throws WorkbookRefusal, RefreshRefusal {
    Optional<String> wanted = wishes.further().set();
    if (wanted.isEmpty()) {
      wanted = TypeSetSheet.askedBefore(workbook, marks);
    }
    Optional<TypeSet> set =
        lists.set(
            wanted,
            new OwnLists.SetSources(
                appraiser, wishes.standards(), wishes.home(), wishes.latestYear()),
            remarks);
    return set.isEmpty() && marks.sheets().containsKey("set")
        ? Optional.of(TypeSet.unitedStates())
        : set;
  }

  private Appraiser appraiser(Spot spot) {
    Lexicon lexicon = Lexicon.standard();
    return new Appraiser(
        new ClueReader(lexicon),
        new CoinIdentifier(wishes.standards(), lexicon, wishes.home(), wishes.latestYear()),
        spot.prices(),
        wishes.standards());
  }

  /**
   * A price list or an address book can have headings like an inventory's; it gets no columns. A
   * list with many headings understood and no row yet is a new inventory.
   */
  private void refuseNoCoins(Inventory inventory, RowReader reader) throws RefreshRefusal {
    boolean known =
        reader.rows().stream()
            .filter(ReadRow::isCoin)
            .map(ReadRow::appraisal)
            .anyMatch(
                appraisal ->
                    appraisal.state() == RowState.VALUED
                        || appraisal.state() == RowState.SEVERAL
                        || !appraisal.figures().standardId().isEmpty());
    boolean anew =
        reader.rows().stream().noneMatch(ReadRow::isCoin)
            && inventory.table().columns().size() >= FEWEST_OF_A_NEW_LIST;
    boolean wanted = wishes.sheet().isPresent() || !inventory.ours().isEmpty() || anew;
    if (known || wanted) {
      return;
    }
    boolean text = workbook.format() == FileFormat.CSV;
    throw new RefreshRefusal(
        RefreshRefusal.Kind.NO_INVENTORY,
        workbook.path()
            + (text ? "" : ", sheet \"" + inventory.sheet() + "\"")
            + ": the headings in row "
            + (inventory.table().headerRow() + 1)
            + " could be those of an inventory, but no row below them names a coin that is known; "
            + (text
                ? "write year, denomination and type, or a description, of at least one coin."
                : "if it is your list, name it with --sheet \"" + inventory.sheet() + "\"."));
  }

  private void refuseBadCells(RowReader reader) throws RefreshRefusal {
    if (reader.badCells().isEmpty() || wishes.leaveOutBadRows()) {
      return;
    }
    RowReader.BadCell first = reader.badCells().get(0);
    int others = reader.badCells().size() - 1;
    throw new RefreshRefusal(
        RefreshRefusal.Kind.BAD_CELLS,
        workbook.path()
            + ", "
            + first.place()
            + ": "
            + first.sentence()
            + (others > 0 ? " (and " + others + " more such cells)" : "")
            + ", or run again with --leave-out-bad-rows to fill the other rows. Nothing was changed.");
  }

  private WorkbookEdit edit(Reckoning reckoning, Answers answers) throws WorkbookRefusal {
    Inventory inventory = reckoning.inventory();
    RowReader reader = reckoning.reader();
    String sheet = inventory.sheet();
    Workbook.UsedArea used = workbook.usedArea(sheet);
    boolean text = workbook.format() == FileFormat.CSV;
    Map<CalculatedColumn, IntFunction<CellContent>> further = new FurtherColumns(reckoning).all();
    ColumnPlan plan = plan(reckoning, used, further.keySet());
    Filling filling = filling(reckoning, plan, further);
    int headerRow = inventory.table().headerRow();
    int lastRow =
        Math.max(lastRow(reader), inventory.ours().isEmpty() ? headerRow : used.lastRow());
    SheetEdit columns =
        new SheetEdit(
            sheet,
            headerRow,
            headerRow + 1,
            lastRow,
            WatchedColumns.of(filling.edits(ownersHeadings(inventory)), lastRow, progress));
    if (text) {
      return new WorkbookEdit(List.of(columns), List.of(), List.of(), WorkbookEdit.Removal.NOTHING);
    }
    OurSheets sheets = new OurSheets(reckoning);
    sheets.addAll(answers);
    List<NamedCell> names = new ArrayList<>(sheets.names());
    plan.places()
        .forEach(
            (column, place) ->
                names.add(OurMarks.column(column, new CellPlace(sheet, headerRow, place))));
    return new WorkbookEdit(List.of(columns), sheets.drafts(), names, WorkbookEdit.Removal.NOTHING);
  }

  private Filling filling(
      Reckoning reckoning,
      ColumnPlan plan,
      Map<CalculatedColumn, IntFunction<CellContent>> further) {
    boolean text = workbook.format() == FileFormat.CSV;
    return new Filling(
        plan,
        reckoning.reader().rows(),
        reckoning.numbers(),
        reckoning.worths(),
        new Filling.Manner(
            reckoning.inventory().table().first(InputColumn.COUNTRY).isPresent(),
            text ? MoneyCells.VALUES : wishes.money(),
            text),
        further);
  }

  private ColumnPlan plan(
      Reckoning reckoning, Workbook.UsedArea used, Set<CalculatedColumn> further)
      throws WorkbookRefusal {
    return ColumnPlan.of(
        reckoning.inventory(),
        workbook.layout(reckoning.inventory().sheet()),
        workbook.format(),
        used.lastColumn(),
        reckoning.reader().rows(),
        reckoning.numbers().areOurs(),
        further);
  }

  private static int lastRow(RowReader reader) {
    return reader.rows().stream().filter(ReadRow::isCoin).mapToInt(ReadRow::row).max().orElse(0);
  }

  private static Set<String> ownersHeadings(Inventory inventory) {
    Set<String> headings = new HashSet<>();
    inventory
        .table()
        .headings()
        .forEach(
            (place, words) -> {
              if (!inventory.ours().containsValue(place)) {
                headings.add(words);
              }
            });
    return headings;
  }

  /** Takes everything of ours out of the workbook again. */
  public static Workbook.SaveResult takeOut(Workbook workbook) throws WorkbookRefusal {
    return workbook.save(removal(workbook));
  }

  private static WorkbookEdit removal(Workbook workbook) throws WorkbookRefusal {
    List<NamedCell> names = workbook.names();
    OurMarks marks = OurMarks.read(names);
    List<WorkbookEdit.ColumnPlace> columns = new ArrayList<>();
    if (workbook.format() == FileFormat.CSV) {
      columns.addAll(new InventoryFinder(workbook, marks).columnsInText());
    }
    for (Map.Entry<CalculatedColumn, CellPlace> entry : marks.columns().entrySet()) {
      CellPlace place = entry.getValue();
      columns.add(new WorkbookEdit.ColumnPlace(place.sheet(), place.row(), place.column()));
    }
    return new WorkbookEdit(
        List.of(),
        List.of(),
        List.of(),
        new WorkbookEdit.Removal(
            columns, List.copyOf(marks.sheets().values()), OurMarks.allNames(names)));
  }
}
