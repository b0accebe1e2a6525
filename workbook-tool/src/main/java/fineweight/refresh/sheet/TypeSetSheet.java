package fineweight.refresh.sheet;

import fineweight.money.Amounts;
import fineweight.refresh.collection.TypeSetReview;
import fineweight.refresh.inventory.CellTexts;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.SheetReference;
import fineweight.spot.SpotPrices;
import fineweight.standard.Standards;
import fineweight.typeset.SetReview;
import fineweight.typeset.TypeEntry;
import fineweight.typeset.TypeSet;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.CellPlace;
import fineweight.workbook.NamedCell;
import fineweight.workbook.PageSetup;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.BigMoney;

/** Each place of the set: held or missing, and the metal that a coin for a missing one has. */
public final class TypeSetSheet {
  private static final int FIRST_ROW = 5;
  private static final String ASKED = "set_asked";
  private static final int ASKED_COLUMN = 7;

  private final String name;
  private final TypeSetReview set;
  private final SpotPrices prices;
  private final String inventorySheet;
  private final Optional<String> asked;

  /**
   * @param asked how the set was named by its owner; a later run reads it here
   */
  public TypeSetSheet(
      String name,
      TypeSetReview set,
      SpotPrices prices,
      String inventorySheet,
      Optional<String> asked) {
    this.asked = asked;
    this.name = name;
    this.set = set;
    this.prices = prices;
    this.inventorySheet = inventorySheet;
  }

  public SheetDraft draft() {
    SetReview review = set.review();
    Lines lines = new Lines();
    head(lines, review);
    Map<String, List<ReadRow>> rows = set.rowsByPlace();
    for (TypeEntry entry : review.set().entries()) {
      lines.line(line(entry, rows.getOrDefault(entry.key(), List.of())));
    }
    return new SheetDraft(
            name,
            false,
            lines.rows(),
            Map.of(0, 22.0, 1, 46.0, 2, 30.0, 3, 13.0, 4, 9.0, 5, 13.0, 6, 18.0),
            FIRST_ROW,
            Map.of())
        .printed(PageSetup.upright(FIRST_ROW));
  }

  private void head(Lines lines, SetReview review) {
    List<DraftCell> title = new ArrayList<>();
    title.add(DraftCell.text("Type set: " + review.set().name(), Kind.TITLE));
    if (asked.isPresent()) {
      title.addAll(Collections.nCopies(ASKED_COLUMN - 1, null));
      title.add(DraftCell.text(asked.get(), Kind.REMARK));
    }
    lines.line(title);
    lines.line(List.of(DraftCell.text(review.coverageWords(), Kind.PLAIN)));
    lines.remark(
        "The metal floor is the least melt of a coin for the place at the spot prices of "
            + prices.date()
            + "; such a coin costs more than that.");
    lines.remark(
        "Write keep or sell into a Status column of your own to overrule a proposal in the inventory: your word stays.");
    lines.headings(
        List.of(
            "Denomination",
            "Place",
            "Dates",
            "State",
            "Pieces",
            "First piece",
            "Metal floor " + prices.currency().getCode()));
  }

  private List<DraftCell> line(TypeEntry entry, List<ReadRow> held) {
    List<DraftCell> line = new ArrayList<>();
    line.add(Lines.text(entry.origin().denomination()));
    line.add(Lines.text(entry.name()));
    line.add(Lines.text(entry.years().toString().replace(";", "; ")));
    line.add(Lines.text(held.isEmpty() ? "○ missing" : "● held"));
    if (held.isEmpty()) {
      line.add(Lines.text(""));
      line.add(Lines.text(""));
      line.add(Lines.money(floor(entry)));
    } else {
      line.add(Lines.whole(held.stream().mapToLong(TypeSetSheet::pieces).sum()));
      line.add(link(held.get(0)));
      line.add(Lines.text(""));
    }
    return line;
  }

  private static long pieces(ReadRow row) {
    return row.appraisal().pieces().orElse(1L);
  }

  private DraftCell link(ReadRow row) {
    return new DraftCell(
        new CellContent.Text("row " + (row.row() + 1)),
        CellLook.GENERAL,
        Kind.PLAIN,
        SheetReference.of(new CellPlace(inventorySheet, row.row(), 0)).replace("$", ""));
  }

  private Optional<BigDecimal> floor(TypeEntry entry) {
    return TypeSet.metalFloor(entry, Standards.catalogue(), prices)
        .filter(BigMoney::isPositive)
        .map(floor -> Amounts.atCell(floor).getAmount());
  }

  public List<NamedCell> names() {
    List<NamedCell> names = new ArrayList<>();
    names.add(OurMarks.sheet("set", name));
    if (asked.isPresent()) {
      names.add(
          new NamedCell(
              OurMarks.PREFIX + ASKED,
              SheetReference.of(new CellPlace(name, 0, ASKED_COLUMN)),
              true));
    }
    return names;
  }

  /** How the set was named in an earlier run; empty if it was not named. */
  public static Optional<String> askedBefore(Workbook workbook, OurMarks marks)
      throws WorkbookRefusal {
    CellPlace place = marks.values().get(ASKED);
    List<String> found = new ArrayList<>();
    if (place != null) {
      workbook.read(
          place.sheet(),
          column -> column == place.column(),
          place.row(),
          cells ->
              cells.stream()
                  .filter(cell -> cell.place().equals(place))
                  .forEach(cell -> found.add(CellTexts.text(cell.value()).strip())));
    }
    return found.stream().filter(words -> !words.isEmpty()).findFirst();
  }
}
