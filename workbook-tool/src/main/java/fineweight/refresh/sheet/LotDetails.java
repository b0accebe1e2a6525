package fineweight.refresh.sheet;

import fineweight.lot.BreakEven;
import fineweight.lot.SpotTable;
import fineweight.metal.Metal;
import fineweight.refresh.worth.Lot;
import fineweight.refresh.worth.Lots;
import fineweight.refresh.worth.Spot;
import fineweight.valuation.WorthCurve;
import fineweight.workbook.SheetDraft.DraftCell;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.joda.money.Money;

/** What is said of each lot that has a cost, below the lines of all lots. */
final class LotDetails {
  /** More lots than a person reads one by one. */
  private static final int MOST_LOTS = 60;

  private final Spot spot;
  private final List<Lot> lots;

  LotDetails(Spot spot, Lots all) {
    this.spot = spot;
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
}
