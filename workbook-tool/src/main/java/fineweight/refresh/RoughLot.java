package fineweight.refresh;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.column.Appraiser;
import fineweight.identification.CoinIdentifier;
import fineweight.refresh.inventory.Answers;
import fineweight.refresh.inventory.Fate;
import fineweight.refresh.inventory.Inventory;
import fineweight.refresh.inventory.InventoryFinder;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.Progress;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.refresh.inventory.RowMoney;
import fineweight.refresh.inventory.RowReader;
import fineweight.refresh.own.OwnLists;
import fineweight.refresh.own.OwnTerms;
import fineweight.refresh.worth.Spot;
import fineweight.refresh.worth.Worths;
import fineweight.spot.SpotPrices;
import fineweight.valuation.WorthRange;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A lot that is only described: its pieces read and valued, nothing written. Immutable.
 *
 * @param lines what stands in it
 * @param spot the prices it was valued at
 * @param remarks sentences about cells and lists that could not be used
 */
public record RoughLot(List<Line> lines, SpotPrices spot, List<String> remarks) {
  /**
   * One line of the lot.
   *
   * @param number from 1; the row in a sheet
   * @param worth lowest and highest, all pieces of the line; zero where nothing is known
   * @param note the question or the reason where the line is open or not known; otherwise empty
   */
  public record Line(int number, String words, WorthRange worth, String note) {}

  public RoughLot {
    lines = List.copyOf(lines);
    remarks = List.copyOf(remarks);
  }

  /** A lot whose pieces stand in a sheet or a text table under headings like an inventory's. */
  public static RoughLot of(Workbook workbook, RefreshWishes wishes)
      throws WorkbookRefusal, RefreshRefusal {
    OurMarks marks = OurMarks.read(workbook.names());
    OwnLists lists = OwnLists.find(workbook, marks, wishes.further().lists());
    Inventory inventory = new InventoryFinder(workbook, marks, lists.sheets()).find(wishes.sheet());
    Spot spot = Spot.of(workbook, marks, wishes.prices(), wishes.currencyGiven(), wishes.wear());
    Appraiser appraiser = appraiser(wishes, spot);
    RowReader reader = new RowReader(workbook, inventory, appraiser, Answers.read(workbook, marks));
    reader.read(Progress.UNSEEN);
    OwnTerms own = lists.terms(spot.prices(), appraiser, wishes.standards());
    List<String> remarks = new ArrayList<>(own.remarks());
    reader
        .badCells()
        .forEach(
            cell ->
                remarks.add(workbook.path() + ", " + cell.place() + ": " + cell.sentence() + "."));
    return valued(
        reader.rows().stream().filter(ReadRow::isCoin).flatMap(row -> row.held().stream()).toList(),
        new Worths(spot, own),
        remarks);
  }

  /** A lot of which each line is one piece or several alike, in a person's words. */
  public static RoughLot ofWords(List<String> words, RefreshWishes wishes)
      throws WorkbookRefusal, RefreshRefusal {
    Spot spot = new Spot(wishes.prices(), wishes.wear().orElse(BigDecimal.ZERO), List.of());
    Appraiser appraiser = appraiser(wishes, spot);
    List<ReadRow> rows = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      if (!words.get(i).isBlank()) {
        Field field = new Field(FieldRole.DESCRIPTION, words.get(i).strip());
        rows.add(
            new ReadRow(
                i,
                appraiser.appraise(List.of(field)),
                "",
                RowMoney.NONE,
                Fate.UNSAID,
                Optional.empty()));
      }
    }
    OwnTerms own =
        OwnLists.ofFiles(wishes.further().lists())
            .terms(spot.prices(), appraiser, wishes.standards());
    return valued(rows, new Worths(spot, own), own.remarks());
  }

  private static Appraiser appraiser(RefreshWishes wishes, Spot spot) {
    Lexicon lexicon = Lexicon.standard();
    return new Appraiser(
        new ClueReader(lexicon),
        new CoinIdentifier(wishes.standards(), lexicon, wishes.home(), wishes.latestYear()),
        spot.prices(),
        wishes.standards());
  }

  private static RoughLot valued(List<ReadRow> rows, Worths worths, List<String> remarks) {
    List<Line> lines = new ArrayList<>();
    for (ReadRow row : rows) {
      WorthRange worth = worths.range(row);
      boolean nothing = worth.high().worth().money().isZero();
      List<String> notes = row.appraisal().notes();
      String note = (worth.open() || nothing) && !notes.isEmpty() ? notes.get(0) : "";
      lines.add(new Line(row.row() + 1, row.words(), worth, note));
    }
    return new RoughLot(lines, worths.spot().prices(), remarks);
  }

  /** The sum of the lowest worths, each rounded as in a cell. */
  public Money least() {
    return Money.total(
        currency(), lines.stream().map(line -> line.worth().low().worth().atCell()).toList());
  }

  /** The sum of the highest worths. */
  public Money most() {
    return Money.total(
        currency(), lines.stream().map(line -> line.worth().high().worth().atCell()).toList());
  }

  /** How many lines are open or not known. */
  public long open() {
    return lines.stream().filter(line -> line.worth().open()).count();
  }

  private CurrencyUnit currency() {
    return spot.currency();
  }
}
