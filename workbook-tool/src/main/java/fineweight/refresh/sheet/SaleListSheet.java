package fineweight.refresh.sheet;

import fineweight.refresh.collection.SaleLine;
import fineweight.refresh.collection.SellingTerms;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.SheetReference;
import fineweight.refresh.worth.Spot;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.CellPlace;
import fineweight.workbook.NamedCell;
import fineweight.workbook.PageSetup;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/** What is for sale, one clear line a row, with the least price and the melt floor. */
public final class SaleListSheet {
  private static final int FIRST_ROW = 4;

  private static final Map<Integer, Double> WIDTHS =
      Map.ofEntries(
          Map.entry(0, 8.0),
          Map.entry(1, 9.0),
          Map.entry(2, 16.0),
          Map.entry(3, 40.0),
          Map.entry(4, 9.0),
          Map.entry(5, 7.0),
          Map.entry(6, 14.0),
          Map.entry(7, 8.0),
          Map.entry(8, 9.0),
          Map.entry(9, 18.0),
          Map.entry(10, 24.0),
          Map.entry(11, 13.0),
          Map.entry(12, 17.0),
          Map.entry(13, 16.0),
          Map.entry(14, 18.0),
          Map.entry(15, 18.0));

  private final String name;
  private final Spot spot;
  private final List<SaleLine> list;
  private final Optional<SellingTerms> terms;
  private final String inventorySheet;

  public SaleListSheet(
      String name,
      Spot spot,
      List<SaleLine> list,
      Optional<SellingTerms> terms,
      String inventorySheet) {
    this.name = name;
    this.spot = spot;
    this.list = list;
    this.terms = terms;
    this.inventorySheet = inventorySheet;
  }

  public SheetDraft draft() {
    String currency = spot.prices().currency().getCode();
    Lines lines = new Lines();
    lines.title("For sale, at the spot prices of " + spot.prices().date());
    lines.remark(
        list.isEmpty()
            ? "Nothing is for sale: write \"for sale\" into a column Status of your own, or have a type set reviewed."
            : "Marked for sale by you, or proposed by the type set and not overruled.");
    lines.remark(
        terms.map(SaleListSheet::words).orElse("No fees are known, so there is no least price."));
    lines.headings(headings(currency));
    list.forEach(line -> lines.line(line(line)));
    return new SheetDraft(name, false, lines.rows(), WIDTHS, FIRST_ROW, Map.of())
        .printed(PageSetup.wide(FIRST_ROW));
  }

  private static List<String> headings(String currency) {
    List<String> headings =
        new ArrayList<>(List.of("Piece", "Row", "Country", "Coin", "Year", "Mint", "Metal"));
    headings.addAll(List.of("Pieces", "Grade", "Holder", "Faults"));
    headings.add("Cost " + currency);
    headings.add("Least price " + currency);
    headings.add("Melt floor " + currency);
    headings.addAll(List.of("Place", "Picture"));
    return headings;
  }

  private static String words(SellingTerms terms) {
    String place = terms.fees().name().isEmpty() ? "" : " at \"" + terms.fees().name() + "\"";
    return "The least price"
        + place
        + " leaves "
        + terms.wanted().words()
        + " after fees, postage and packing; for all pieces of a line in one sale.";
  }

  private List<DraftCell> line(SaleLine line) {
    List<DraftCell> cells = new ArrayList<>();
    cells.add(Lines.text(line.number()));
    cells.add(
        new DraftCell(
            new CellContent.Text("row " + (line.row() + 1)),
            CellLook.GENERAL,
            Kind.PLAIN,
            SheetReference.of(new CellPlace(inventorySheet, line.row(), 0)).replace("$", "")));
    cells.add(Lines.text(line.coin().country()));
    cells.add(Lines.text(line.coin().words()));
    cells.add(Lines.text(line.coin().year()));
    cells.add(Lines.text(line.coin().mint()));
    cells.add(Lines.text(line.coin().metal()));
    cells.add(Lines.whole(line.figures().pieces()));
    cells.add(Lines.text(line.state().grade()));
    cells.add(Lines.text(line.state().holder()));
    cells.add(Lines.text(line.state().faults()));
    cells.add(Lines.money(line.figures().cost().map(Money::getAmount)));
    cells.add(Lines.money(line.figures().least().map(Money::getAmount)));
    cells.add(Lines.money(line.figures().floor()));
    cells.add(Lines.text(line.keeping().place()));
    cells.add(Lines.text(line.keeping().picture()));
    return cells;
  }

  public List<NamedCell> names() {
    return List.of(OurMarks.sheet("sale", name));
  }
}
