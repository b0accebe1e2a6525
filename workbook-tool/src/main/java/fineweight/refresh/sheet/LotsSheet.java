package fineweight.refresh.sheet;

import fineweight.column.MeltFormula;
import fineweight.column.RowState;
import fineweight.metal.Metal;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.worth.Spot;
import fineweight.refresh.worth.Totals;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One line for each lot: pieces, cost, fine ounces, melt, and what the melt leaves over the cost.
 */
public final class LotsSheet {
  private static final CellLook OUNCES = CellLook.number("0.0000");
  private static final CellLook MONEY = CellLook.number("#,##0.00");
  private static final CellLook WHOLE = CellLook.number("0");

  private final String name;
  private final Spot spot;
  private final Map<String, Totals> lots = new LinkedHashMap<>();

  public LotsSheet(String name, Spot spot, List<ReadRow> rows) {
    this.name = name;
    this.spot = spot;
    MeltFormula melt = new MeltFormula(spot.prices(), spot.wear());
    for (ReadRow row : rows) {
      if (row.isCoin()) {
        String lot = row.money().lot().isEmpty() ? "(no lot)" : row.money().lot();
        lots.computeIfAbsent(lot, unused -> new Totals(melt, spot.prices().currency().getCode()))
            .add(row);
      }
    }
  }

  public SheetDraft draft() {
    String currency = spot.prices().currency().getCode();
    List<List<DraftCell>> rows = new ArrayList<>();
    rows.add(
        List.of(DraftCell.text("Lots at the spot prices of " + spot.prices().date(), Kind.TITLE)));
    List<DraftCell> headings = new ArrayList<>();
    for (String heading : List.of("Lot", "Rows", "Pieces", "Cost", "Cost in")) {
      headings.add(DraftCell.text(heading, Kind.HEADER));
    }
    Spot.precious()
        .forEach(metal -> headings.add(DraftCell.text(capital(metal) + " ozt", Kind.HEADER)));
    for (String heading :
        List.of(
            "Melt at least " + currency,
            "Melt at most " + currency,
            "Melt less cost " + currency,
            "Open rows",
            "Remarks")) {
      headings.add(DraftCell.text(heading, Kind.HEADER));
    }
    rows.add(headings);
    lots.forEach((lot, totals) -> rows.add(line(lot, totals)));
    Map<Integer, Double> widths = new LinkedHashMap<>();
    for (int column = 0; column < headings.size(); column++) {
      widths.put(column, column == headings.size() - 1 ? 60.0 : 18.0);
    }
    return new SheetDraft(name, false, rows, widths, 2, Map.of());
  }

  private List<DraftCell> line(String lot, Totals totals) {
    List<DraftCell> line = new ArrayList<>();
    line.add(DraftCell.text(lot, Kind.PLAIN));
    line.add(number(BigDecimal.valueOf(totals.rows()), WHOLE));
    line.add(number(BigDecimal.valueOf(totals.pieces()), WHOLE));
    boolean oneCurrency = totals.costs().size() == 1;
    String costCurrency = oneCurrency ? totals.costs().keySet().iterator().next() : "";
    boolean comparable = oneCurrency && costCurrency.equals(spot.prices().currency().getCode());
    BigDecimal cost = oneCurrency ? totals.costs().values().iterator().next() : BigDecimal.ZERO;
    line.add(
        oneCurrency
            ? number(cost.setScale(2, RoundingMode.HALF_UP), MONEY)
            : DraftCell.text("", Kind.PLAIN));
    line.add(DraftCell.text(costCurrency, Kind.PLAIN));
    for (Metal metal : Spot.precious()) {
      line.add(number(MeltFormula.ounces(totals.content().troyOunces(metal)), OUNCES));
    }
    line.add(number(totals.least(), MONEY));
    line.add(number(totals.most(), MONEY));
    line.add(
        comparable
            ? number(totals.least().subtract(cost).setScale(2, RoundingMode.HALF_UP), MONEY)
            : DraftCell.text("", Kind.PLAIN));
    int open = totals.count(RowState.SEVERAL) + totals.count(RowState.NOT_KNOWN);
    line.add(number(BigDecimal.valueOf(open), WHOLE));
    line.add(DraftCell.text(remarks(totals, oneCurrency, comparable), Kind.REMARK));
    return line;
  }

  private static String remarks(Totals totals, boolean oneCurrency, boolean comparable) {
    List<String> remarks = new ArrayList<>();
    if (totals.costs().size() > 1) {
      List<String> sums = new ArrayList<>();
      totals.costs().forEach((code, sum) -> sums.add(sum.toPlainString() + " " + code));
      remarks.add("cost in several currencies: " + String.join(", ", sums));
    } else if (oneCurrency && !comparable) {
      remarks.add(
          "the cost is in another currency than the prices, so it is not set against the melt");
    }
    if (totals.withoutCost() > 0) {
      remarks.add(totals.withoutCost() + " rows without a cost that can be read");
    }
    if (totals.withoutPrice() > 0) {
      remarks.add(totals.withoutPrice() + " rows hold a metal without a price");
    }
    return String.join("; ", remarks);
  }

  private static String capital(Metal metal) {
    return metal.word().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
        + metal.word().substring(1);
  }

  private static DraftCell number(BigDecimal number, CellLook look) {
    return DraftCell.of(new CellContent.Number(number), look);
  }

  public List<NamedCell> names() {
    return List.of(OurMarks.sheet("lots", name));
  }
}
