package fineweight.refresh.sheet;

import fineweight.column.MeltFormula;
import fineweight.metal.Metal;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.SheetReference;
import fineweight.refresh.worth.Spot;
import fineweight.spot.SpotPrice;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.CellPlace;
import fineweight.workbook.NamedCell;
import fineweight.workbook.PageSetup;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The sheet that holds the prices behind every melt formula: change a price there and all figures
 * follow.
 */
public final class SpotSheet {
  private static final int FIRST_PRICE = 4;

  private final String name;
  private final Spot spot;

  public SpotSheet(String name, Spot spot) {
    this.name = name;
    this.spot = spot;
  }

  public SheetDraft draft() {
    List<List<DraftCell>> rows = new ArrayList<>();
    rows.add(List.of(DraftCell.text("Spot prices", Kind.TITLE)));
    rows.add(
        List.of(
            DraftCell.text("Date of the prices", Kind.PLAIN),
            cell(
                new CellContent.Text(spot.prices().date().toString()),
                CellLook.GENERAL,
                Kind.INPUT)));
    rows.add(
        List.of(
            DraftCell.text("Currency (ISO 4217)", Kind.PLAIN),
            cell(
                new CellContent.Text(spot.prices().currency().getCode()),
                CellLook.GENERAL,
                Kind.INPUT)));
    rows.add(
        List.of(
            DraftCell.text("Metal", Kind.HEADER),
            DraftCell.text("Price per troy ounce", Kind.HEADER),
            DraftCell.text("ISO 4217 code", Kind.HEADER)));
    for (Metal metal : Spot.precious()) {
      rows.add(
          List.of(
              DraftCell.text(metal.word(), Kind.PLAIN),
              cell(price(metal), CellLook.number("#,##0.00##"), Kind.INPUT),
              DraftCell.text(metal.ounceCode().orElseThrow(), Kind.PLAIN)));
    }
    for (Metal metal : spot.base()) {
      BigDecimal price = MeltFormula.perTonne(spot.prices().of(metal).orElseThrow());
      rows.add(
          List.of(
              DraftCell.text(metal.word() + ", per tonne", Kind.PLAIN),
              cell(new CellContent.Number(price), CellLook.number("#,##0.00##"), Kind.INPUT),
              DraftCell.text(metal.symbol() + " (IUPAC)", Kind.PLAIN)));
    }
    rows.add(
        List.of(
            DraftCell.text("Share lost by wear (0 to 0.99)", Kind.PLAIN),
            cell(new CellContent.Number(spot.wear()), CellLook.number("0.0000"), Kind.INPUT)));
    rows.add(List.of());
    remarks(rows);
    return new SheetDraft(name, false, rows, Map.of(0, 34.0, 1, 22.0, 2, 16.0), 0, Map.of())
        .printed(PageSetup.upright(0));
  }

  private static void remarks(List<List<DraftCell>> rows) {
    for (String remark :
        List.of(
            "Every melt figure in the inventory follows these cells. Change a price here, or refresh with new ones.",
            "Melt is not an offer and not an appraisal, and not investment, tax or legal advice; a buyer pays less than melt.",
            "Many coins are worth more than their metal: have a doubtful piece looked at before it is sold as scrap.",
            "Melting or exporting some coins is unlawful in some places (United States cents and five cents: 31 CFR part 82). Local law decides.")) {
      rows.add(List.of(DraftCell.text(remark, Kind.REMARK)));
    }
  }

  private CellContent price(Metal metal) {
    Optional<SpotPrice> price = spot.prices().of(metal);
    return price.isPresent()
        ? new CellContent.Number(price.get().perTroyOunce())
        : CellContent.EMPTY;
  }

  private static DraftCell cell(CellContent content, CellLook look, Kind kind) {
    return new DraftCell(content, look, kind, "");
  }

  /** The names behind which the cells stand. */
  public List<NamedCell> names() {
    List<NamedCell> names = new ArrayList<>();
    names.add(OurMarks.sheet("spot", name));
    names.add(value("date", 1));
    names.add(value("currency", 2));
    int row = FIRST_PRICE;
    List<Metal> metals = new ArrayList<>(Spot.precious());
    metals.addAll(spot.base());
    for (Metal metal : metals) {
      names.add(
          new NamedCell(
              MeltFormula.priceName(metal),
              SheetReference.of(new CellPlace(name, row++, 1)),
              false));
    }
    names.add(
        new NamedCell(
            MeltFormula.wearName(), SheetReference.of(new CellPlace(name, row, 1)), false));
    return names;
  }

  private NamedCell value(String end, int row) {
    return new NamedCell(
        OurMarks.PREFIX + end, SheetReference.of(new CellPlace(name, row, 1)), true);
  }
}
