package fineweight.refresh.sheet;

import fineweight.lot.RunningTotal;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.SheetReference;
import fineweight.refresh.worth.Lot;
import fineweight.refresh.worth.Lots;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.CellPlace;
import fineweight.workbook.NamedCell;
import fineweight.workbook.PageSetup;
import fineweight.workbook.SheetChart;
import fineweight.workbook.SheetChart.Range;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.joda.money.Money;

/**
 * Each lot that has a cost as it was opened, row by row, and beside it charts of the worth so far
 * against the cost. The charts have fixed places one below the other, so that one lot and forty
 * look the same and a chart stays where its owner moves it.
 */
public final class OpeningSheet {
  private static final int MOST_LOTS = 60;
  private static final int MOST_LINES = 3000;
  private static final int MOST_CHARTS = 12;
  private static final int FIRST_ROW = 4;
  private static final int LONGEST_WORDS = 40;

  private static final int NUMBER = 1;
  private static final int TOTAL = 4;
  private static final int COST = 5;
  private static final int CHART_COLUMN = 9;
  private static final int CHART_COLUMNS = 7;
  private static final int CHART_ROWS = 16;

  private static final Map<Integer, Double> WIDTHS =
      Map.of(0, 18.0, 1, 9.0, 2, 9.0, 3, 11.0, 4, 13.0, 5, 11.0, 6, 15.0, 7, 40.0, 8, 2.0);

  private final String name;
  private final String inventorySheet;
  private final List<Lot> lots;

  /** The rows of a lot's steps on the sheet, both counted in. */
  private record Stretch(Lot lot, int first, int last) {
    boolean isLine() {
      return last > first;
    }

    boolean isPaid() {
      return lot.running().orElseThrow().paidAt().isPresent();
    }
  }

  public OpeningSheet(String name, Lots all, String inventorySheet) {
    this.name = name;
    this.inventorySheet = inventorySheet;
    this.lots =
        all.all().stream()
            .filter(lot -> lot.isNamed() && lot.reckonedCost().isPresent())
            .limit(MOST_LOTS)
            .toList();
  }

  /** Whether no lot has a cost. */
  public boolean isEmpty() {
    return lots.isEmpty();
  }

  /**
   * @param charts whether the kind of file takes charts
   */
  public SheetDraft draft(boolean charts) {
    Lines body = new Lines();
    List<Stretch> stretches = steps(body);
    List<Stretch> drawn = charts ? drawn(stretches) : List.of();
    Lines lines = new Lines();
    lines.title("Each lot as it was opened");
    lines.remark(
        "In the order of the rows of the inventory; open rows count with their lowest figure.");
    lines.remark(charts ? words(stretches, drawn) : "A .xls file gets no charts.");
    lines.headings(
        List.of(
            "Lot", "Number", "Row", "Worth", "Worth so far", "Cost", "So far less cost", "Piece"));
    body.rows().forEach(lines::line);
    return new SheetDraft(name, false, lines.rows(), WIDTHS, FIRST_ROW, Map.of())
        .with(IntStream.range(0, drawn.size()).mapToObj(i -> chart(i, drawn.get(i))).toList())
        .printed(new PageSetup(true, FIRST_ROW, breaks(drawn.size())));
  }

  /** Two charts on a page, none cut. */
  private static List<Integer> breaks(int charts) {
    return IntStream.range(1, (charts + 1) / 2)
        .mapToObj(page -> FIRST_ROW + page * 2 * (CHART_ROWS + 1))
        .toList();
  }

  private List<Stretch> steps(Lines body) {
    List<Stretch> stretches = new ArrayList<>();
    for (Lot lot : lots) {
      RunningTotal running = lot.running().orElseThrow();
      int first = FIRST_ROW + body.size();
      if (body.size() + running.steps().size() > MOST_LINES) {
        body.remark("The list ends here; the sheet of lots has the totals of all.");
        break;
      }
      running.steps().forEach(step -> body.line(step(lot, running, step)));
      stretches.add(new Stretch(lot, first, FIRST_ROW + body.size() - 1));
    }
    return stretches;
  }

  private List<DraftCell> step(Lot lot, RunningTotal running, RunningTotal.Step step) {
    ReadRow read = lot.rows().get(step.number() - 1).read();
    boolean paid = running.paidAt().orElse(-1) == step.number();
    CellPlace place = new CellPlace(inventorySheet, read.row(), 0);
    String words = read.words();
    String piece =
        words.length() <= LONGEST_WORDS ? words : words.substring(0, LONGEST_WORDS - 1) + "…";
    return List.of(
        Lines.text(lot.name()),
        Lines.whole(step.number()),
        new DraftCell(
            new CellContent.Text("row " + (read.row() + 1)),
            CellLook.GENERAL,
            Kind.PLAIN,
            SheetReference.of(place).replace("$", "")),
        Lines.money(step.worth().getAmount()),
        Lines.money(step.total().getAmount()),
        Lines.money(running.cost().getAmount()),
        Lines.money(step.standing().getAmount()),
        Lines.text((paid ? "PAID FOR: " : "") + piece));
  }

  /** Lots that have not paid for themselves come first; one row alone makes no line. */
  private static List<Stretch> drawn(List<Stretch> stretches) {
    List<Stretch> drawn = new ArrayList<>();
    stretches.stream().filter(each -> each.isLine() && !each.isPaid()).forEach(drawn::add);
    stretches.stream().filter(each -> each.isLine() && each.isPaid()).forEach(drawn::add);
    return drawn.subList(0, Math.min(MOST_CHARTS, drawn.size()));
  }

  private static String words(List<Stretch> stretches, List<Stretch> drawn) {
    int without = stretches.size() - drawn.size();
    return "Charts: lots that have not paid for themselves first, "
        + MOST_CHARTS
        + " at most"
        + (without == 0
            ? "."
            : "; " + without + (without == 1 ? " lot has none." : " lots have none."));
  }

  private SheetChart chart(int slot, Stretch stretch) {
    Money cost = stretch.lot().reckonedCost().orElseThrow();
    int top = FIRST_ROW + slot * (CHART_ROWS + 1);
    return new SheetChart(
        SheetChart.PREFIX + (slot + 1),
        SheetChart.Kind.LINE,
        new SheetChart.Words(
            title(stretch.lot().name()) + (stretch.isPaid() ? ": paid for" : ": not yet paid for"),
            "A line of the worth so far as a lot is opened, and a dashed line of its cost; the figures stand in the columns Worth so far and Cost.",
            "number of the row in the lot",
            cost.getCurrencyUnit().getCode(),
            "#,##0.00"),
        Range.column(name, NUMBER, stretch.first(), stretch.last()),
        List.of(series(TOTAL, stretch), series(COST, stretch)),
        true,
        new SheetChart.Place(CHART_COLUMN, top, CHART_COLUMN + CHART_COLUMNS, top + CHART_ROWS));
  }

  private static String title(String lot) {
    return lot.regionMatches(true, 0, "lot", 0, 3) ? lot : "Lot " + lot;
  }

  private SheetChart.Series series(int column, Stretch stretch) {
    return new SheetChart.Series(
        new CellPlace(name, FIRST_ROW - 1, column),
        Range.column(name, column, stretch.first(), stretch.last()));
  }

  public List<NamedCell> names() {
    return List.of(OurMarks.sheet("opening", name));
  }
}
