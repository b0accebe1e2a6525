package fineweight.refresh.sheet;

import fineweight.lot.BreakEven;
import fineweight.lot.RunningTotal;
import fineweight.lot.SpotTable;
import fineweight.metal.Metal;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.SheetReference;
import fineweight.refresh.worth.Lot;
import fineweight.refresh.worth.Lots;
import fineweight.refresh.worth.Spot;
import fineweight.valuation.WorthCurve;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.joda.money.Money;

/** What is said of each lot that has a cost, below the lines of all lots. */
final class LotDetails {
  /** More lots than a person reads one by one. */
  private static final int MOST_LOTS = 60;

  private static final int MOST_LINES = 3000;

  private final Spot spot;
  private final String inventorySheet;
  private final List<Lot> lots;

  LotDetails(Spot spot, Lots all, String inventorySheet) {
    this.spot = spot;
    this.inventorySheet = inventorySheet;
    this.lots =
        all.all().stream()
            .filter(lot -> lot.isNamed() && lot.reckonedCost().isPresent())
            .limit(MOST_LOTS)
            .toList();
  }

  void write(Lines lines) {
    if (lots.isEmpty()) {
      return;
    }
    breakEven(lines);
    spotTable(lines);
    opened(lines);
  }

  private void breakEven(Lines lines) {
    lines.blank();
    lines.title("Break-even");
    for (Lot lot : lots) {
      Money cost = lot.reckonedCost().orElseThrow();
      List<WorthCurve> curves = lot.curves();
      lines.line(sentence(lot, BreakEven.ofAllMetals(cost, curves)));
      spot.prices()
          .of(Metal.SILVER)
          .map(silver -> BreakEven.ofMetal(cost, curves, silver))
          .filter(even -> even.spot().isPresent())
          .ifPresent(even -> lines.line(sentence(lot, even)));
    }
  }

  private static List<DraftCell> sentence(Lot lot, BreakEven even) {
    String words = even.sentence();
    return List.of(
        Lines.text(lot.name()),
        Lines.text(
            words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1) + "."));
  }

  private void spotTable(Lines lines) {
    lines.blank();
    lines.title("Worth when all spot prices stand lower or higher, and the gain");
    List<String> headings = new ArrayList<>(List.of("Lot", ""));
    for (int move : SpotTable.USUAL_MOVES) {
      headings.add(move == 0 ? "today" : (move > 0 ? "+" : "−") + Math.abs(move) + " %");
    }
    lines.headings(headings);
    for (Lot lot : lots) {
      SpotTable table =
          SpotTable.of(
              lot.reckonedCost().orElseThrow(),
              lot.curves(),
              EnumSet.allOf(Metal.class),
              SpotTable.USUAL_MOVES);
      List<DraftCell> worth = new ArrayList<>(List.of(Lines.text(lot.name()), Lines.text("worth")));
      List<DraftCell> gain = new ArrayList<>(List.of(Lines.text(lot.name()), Lines.text("gain")));
      for (SpotTable.Line line : table.lines()) {
        worth.add(Lines.money(line.worth().getAmount()));
        gain.add(Lines.money(line.gain().money().getAmount()));
      }
      lines.line(worth);
      lines.line(gain);
    }
  }

  private void opened(Lines lines) {
    lines.blank();
    lines.title("Each lot as it was opened, in the order of the rows");
    lines.headings(List.of("Lot", "Number", "Row", "Worth", "Total", "Total less cost", "Piece"));
    for (Lot lot : lots) {
      RunningTotal running = lot.running().orElseThrow();
      for (RunningTotal.Step step : running.steps()) {
        if (lines.size() >= MOST_LINES) {
          lines.remark("The list ends here; the totals above are of all rows.");
          return;
        }
        lines.line(step(lot, running, step));
      }
    }
  }

  private List<DraftCell> step(Lot lot, RunningTotal running, RunningTotal.Step step) {
    ReadRow read = lot.rows().get(step.number() - 1).read();
    boolean paid = running.paidAt().orElse(-1) == step.number();
    CellPlace place = new CellPlace(inventorySheet, read.row(), 0);
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
        Lines.money(step.standing().getAmount()),
        Lines.text((paid ? "PAID FOR: " : "") + read.words()));
  }
}
