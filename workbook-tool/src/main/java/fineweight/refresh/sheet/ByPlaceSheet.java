package fineweight.refresh.sheet;

import fineweight.refresh.collection.ByPlace;
import fineweight.refresh.collection.SaleLine;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.worth.Spot;
import fineweight.valuation.Worth;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/** What is kept where, for an insurer and for those who inherit, with the day of the prices. */
public final class ByPlaceSheet {
  private static final int FIRST_ROW = 4;
  private static final int WORTH = 11;

  private final String name;
  private final Spot spot;
  private final ByPlace list;

  public ByPlaceSheet(String name, Spot spot, ByPlace list) {
    this.name = name;
    this.spot = spot;
    this.list = list;
  }

  public SheetDraft draft() {
    String currency = spot.prices().currency().getCode();
    Lines lines = new Lines();
    lines.title("What is kept where, on " + spot.prices().date());
    lines.remark(ByPlace.CAUTION);
    lines.remark(
        "Worth is your own price, else metal at the payout or face value, as the last column says.");
    lines.headings(
        List.of(
            "Place",
            "Piece",
            "Country",
            "Coin",
            "Year",
            "Mint",
            "Metal",
            "Pieces",
            "Grade",
            "Holder",
            "Faults",
            "Worth " + currency,
            "Cost " + currency,
            "Picture",
            "Worth rests on"));
    for (String place : list.places()) {
      list.at(place).forEach(line -> lines.line(line(line)));
      total(lines, place);
    }
    return new SheetDraft(name, false, lines.rows(), widths(), FIRST_ROW, Map.of());
  }

  private static Map<Integer, Double> widths() {
    double[] wide = {18, 8, 16, 36, 9, 7, 14, 8, 9, 18, 18, 14, 14, 18, 40};
    Map<Integer, Double> widths = new java.util.TreeMap<>();
    for (int i = 0; i < wide.length; i++) {
      widths.put(i, wide[i]);
    }
    return widths;
  }

  private static List<DraftCell> line(ByPlace.Line line) {
    SaleLine piece = line.piece();
    List<DraftCell> cells = new ArrayList<>();
    cells.add(Lines.text(line.place()));
    cells.add(Lines.text(piece.number()));
    cells.add(Lines.text(piece.coin().country()));
    cells.add(Lines.text(piece.coin().words()));
    cells.add(Lines.text(piece.coin().year()));
    cells.add(Lines.text(piece.coin().mint()));
    cells.add(Lines.text(piece.coin().metal()));
    cells.add(Lines.whole(piece.figures().pieces()));
    cells.add(Lines.text(piece.state().grade()));
    cells.add(Lines.text(piece.state().holder()));
    cells.add(Lines.text(piece.state().faults()));
    cells.add(Lines.money(line.amount().map(Money::getAmount)));
    cells.add(Lines.money(piece.figures().cost().map(Money::getAmount)));
    cells.add(Lines.text(piece.keeping().picture()));
    cells.add(Lines.text(line.worth().map(Worth::sentence).orElse("not known")));
    return cells;
  }

  private void total(Lines lines, String place) {
    BigDecimal sum = BigDecimal.ZERO;
    for (ByPlace.Line line : list.at(place)) {
      sum = sum.add(line.amount().map(Money::getAmount).orElse(BigDecimal.ZERO));
    }
    DraftCell[] cells = new DraftCell[WORTH + 1];
    cells[0] = Lines.total(Lines.text("All of " + (place.isEmpty() ? "what has no place" : place)));
    cells[WORTH] = Lines.total(Lines.money(sum));
    lines.line(Arrays.asList(cells));
  }

  public List<NamedCell> names() {
    return List.of(OurMarks.sheet("place", name));
  }
}
