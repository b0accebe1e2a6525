package fineweight.refresh.sheet;

import fineweight.column.MeltFormula;
import fineweight.lot.RunningTotal;
import fineweight.lot.WrittenCost;
import fineweight.metal.Metal;
import fineweight.money.Amounts;
import fineweight.money.Gain;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.worth.Lot;
import fineweight.refresh.worth.Lots;
import fineweight.refresh.worth.Spot;
import fineweight.refresh.worth.Totals;
import fineweight.workbook.CellContent;
import fineweight.workbook.NamedCell;
import fineweight.workbook.PageSetup;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.joda.money.Money;

/**
 * One line for each lot: pieces, cost, fine ounces, melt, worth and gain; below them at which spot
 * each lot breaks even and its worth at other spots.
 */
public final class LotsSheet {
  /** Where a person may write what a lot cost, from 0. */
  public static final int OWN_COST = 3;

  /** The first line of a lot, from 0. */
  public static final int FIRST_ROW = 3;

  private final String name;
  private final Spot spot;
  private final Lots lots;
  private final Map<String, BigDecimal> ownFigures;
  private final List<Metal> metals;

  /**
   * @param ownFigures what their owner wrote as the cost of a lot
   */
  public LotsSheet(String name, Spot spot, Lots lots, Map<String, BigDecimal> ownFigures) {
    this.name = name;
    this.spot = spot;
    this.lots = lots;
    this.ownFigures = ownFigures;
    this.metals = Spot.precious().stream().filter(this::isHeld).toList();
  }

  private boolean isHeld(Metal metal) {
    boolean usual = metal == Metal.GOLD || metal == Metal.SILVER;
    return usual
        || lots.all().stream()
            .anyMatch(lot -> lot.totals().content().troyOunces(metal).signum() > 0);
  }

  public SheetDraft draft() {
    Lines lines = new Lines();
    lines.title("Lots at the spot prices of " + spot.prices().date());
    lines.remark(
        "Where the cost of a lot is in doubt, type it into the framed cell and refresh: it then counts before the figures in the rows.");
    List<String> headings = headings();
    lines.headings(headings);
    lots.all().forEach(lot -> lines.line(line(lot)));
    new LotDetails(spot, lots).write(lines);
    Map<Integer, Double> widths = new HashMap<>();
    for (int column = 0; column < headings.size(); column++) {
      widths.put(column, column < 3 ? 9.0 : 19.0);
    }
    widths.put(0, 18.0);
    widths.put(headings.size() - 2, 34.0);
    widths.put(headings.size() - 1, 60.0);
    return new SheetDraft(name, false, lines.rows(), widths, FIRST_ROW, Map.of())
        .printed(PageSetup.wide(FIRST_ROW));
  }

  private List<String> headings() {
    String currency = spot.prices().currency().getCode();
    List<String> headings =
        new ArrayList<>(List.of("Lot", "Rows", "Pieces", "Your figure", "Cost", "Cost in"));
    metals.forEach(metal -> headings.add(HistorySheet.capital(metal) + " ozt"));
    for (String money :
        List.of("Melt at least", "Melt at most", "Worth at least", "Worth at most", "Gain")) {
      headings.add(money + " " + currency);
    }
    headings.addAll(List.of("Gain, % of cost", "Open rows", "Paid for itself", "Remarks"));
    return headings;
  }

  private List<DraftCell> line(Lot lot) {
    Totals totals = lot.totals();
    List<DraftCell> line = new ArrayList<>();
    line.add(Lines.text(lot.isNamed() ? lot.name() : "(no lot)"));
    line.add(Lines.whole(totals.rows()));
    line.add(Lines.whole(totals.pieces()));
    line.add(ownFigure(lot));
    cost(lot, line);
    for (Metal metal : metals) {
      BigDecimal ounces = MeltFormula.ounces(totals.content().troyOunces(metal));
      line.add(Lines.number(ounces, Lines.OUNCES));
    }
    line.add(Lines.money(totals.least()));
    line.add(Lines.money(totals.most()));
    line.add(Lines.money(lot.least().getAmount()));
    line.add(Lines.money(lot.most().getAmount()));
    gain(lot, line);
    line.add(Lines.whole(lot.open()));
    line.add(Lines.text(lot.isNamed() ? lot.running().map(run -> paid(lot, run)).orElse("") : ""));
    line.add(DraftCell.text(remarks(lot), Kind.REMARK));
    return line;
  }

  private DraftCell ownFigure(Lot lot) {
    if (!lot.isNamed()) {
      return Lines.text("");
    }
    BigDecimal own = ownFigures.get(lot.name());
    CellContent content = own == null ? CellContent.EMPTY : new CellContent.Number(own);
    return new DraftCell(content, Lines.MONEY, Kind.INPUT, "");
  }

  private static void cost(Lot lot, List<DraftCell> line) {
    Map<String, BigDecimal> written = lot.totals().costs();
    Optional<Money> reckoned = lot.reckonedCost();
    if (reckoned.isPresent()) {
      line.add(Lines.money(reckoned.get().getAmount()));
      line.add(Lines.text(lot.currency().getCode()));
    } else if (written.size() == 1) {
      Map.Entry<String, BigDecimal> only = written.entrySet().iterator().next();
      line.add(Lines.money(only.getValue().setScale(2, RoundingMode.HALF_UP)));
      line.add(Lines.text(only.getKey()));
    } else {
      line.add(Lines.text(""));
      line.add(Lines.text(""));
    }
  }

  private static void gain(Lot lot, List<DraftCell> line) {
    Optional<Gain> gain = lot.reckonedCost().map(cost -> Gain.of(lot.least(), cost));
    line.add(Lines.money(gain.map(found -> found.money().getAmount())));
    Optional<BigDecimal> share =
        gain.flatMap(Gain::percentOfCost)
            .map(percent -> percent.movePointLeft(2).setScale(6, RoundingMode.HALF_UP));
    line.add(share.isPresent() ? Lines.number(share.get(), Lines.SHARE) : Lines.text(""));
  }

  /** The row at which the lot had paid for itself, in words. */
  private static String paid(Lot lot, RunningTotal running) {
    OptionalInt at = running.paidAt();
    if (at.isEmpty()) {
      return "not yet, " + running.gain().money().abs().getAmount().toPlainString() + " short";
    }
    if (at.getAsInt() == 0) {
      return "cost nothing";
    }
    ReadRow read = lot.rows().get(at.getAsInt() - 1).read();
    return "with row " + (read.row() + 1) + ", number " + at.getAsInt() + " of the lot";
  }

  private static String remarks(Lot lot) {
    Totals totals = lot.totals();
    List<String> remarks = new ArrayList<>();
    if (totals.costs().size() > 1) {
      List<String> sums = new ArrayList<>();
      totals.costs().forEach((code, sum) -> sums.add(sum.toPlainString() + " " + code));
      remarks.add("cost in several currencies: " + String.join(", ", sums));
    } else if (lot.cost().isEmpty()) {
      remarks.add(
          "the cost is in another currency than the prices, so it is not set against the worth");
    }
    if (lot.isNamed()) {
      lot.cost().map(WrittenCost::sentence).ifPresent(remarks::add);
    } else if (totals.withoutCost() > 0) {
      remarks.add(totals.withoutCost() + " rows without a cost that can be read");
    }
    if (lot.received().isPositive()) {
      remarks.add(
          "the worth counts "
              + Amounts.words(lot.received())
              + " received for pieces that are gone");
    }
    if (totals.withoutPrice() > 0) {
      remarks.add(totals.withoutPrice() + " rows hold a metal without a price");
    }
    return String.join("; ", remarks);
  }

  public List<NamedCell> names() {
    return List.of(OurMarks.sheet("lots", name));
  }
}
