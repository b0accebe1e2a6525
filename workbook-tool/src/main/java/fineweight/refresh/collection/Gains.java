package fineweight.refresh.collection;

import fineweight.refresh.inventory.Fate;
import fineweight.refresh.inventory.PieceNumbers;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.worth.Lots;
import fineweight.refresh.worth.Sold;
import fineweight.sale.RealisedGain;
import fineweight.sale.RowLedger;
import fineweight.sale.SaleState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What was gained on the pieces that are gone. */
public final class Gains {
  /** What every list of gains says. */
  public static final String CAUTION =
      "For your own records and no tax advice: how gains on coins are taxed, and which costs count, differs from place to place; ask somebody who knows your law.";

  private final List<Line> lines = new ArrayList<>();
  private final List<String> leftOut = new ArrayList<>();

  /** One sale with the row it was of. */
  public record Line(ReadRow row, RealisedGain gain) {}

  public Gains(List<ReadRow> rows, Lots lots, PieceNumbers numbers, CurrencyUnit currency) {
    for (ReadRow row : rows) {
      if (row.isCoin() && row.fate().kind().isGone()) {
        Optional<Money> cost = lots.share(row.row());
        Optional<Money> net = Sold.net(row, currency);
        String missing = missing(row.fate(), cost, net);
        if (missing.isEmpty()) {
          ledger(row, numbers.of(row.row()), cost.orElseThrow(), net.orElseThrow())
              .gains()
              .forEach(gain -> lines.add(new Line(row, gain)));
        } else {
          leftOut.add("row " + (row.row() + 1) + " is left out of the gains: " + missing);
        }
      }
    }
  }

  private static String missing(Fate fate, Optional<Money> cost, Optional<Money> net) {
    if (fate.mixed()) {
      return "its parts went in different ways; give each part a row of its own with its price and day";
    }
    if (fate.day().isEmpty()) {
      return "the day on which it went is not written, or cannot be read";
    }
    if (net.isEmpty()) {
      return "what was paid for it is not written, or is less than the fees";
    }
    return cost.isEmpty() ? "what it had cost is not known" : "";
  }

  private static RowLedger ledger(ReadRow row, String number, Money cost, Money net) {
    int all = (int) Math.min(row.appraisal().pieces().orElse(1L), Integer.MAX_VALUE);
    SaleState state = SaleState.valueOf(row.fate().kind().name());
    RowLedger.Part part =
        new RowLedger.Part(state, (int) row.gonePieces(), row.fate().day(), Optional.of(net));
    return RowLedger.untouched(number, Math.max(1, all), cost).with(part);
  }

  /** In the order of the sheet. */
  public List<Line> lines() {
    return List.copyOf(lines);
  }

  public List<RealisedGain.Year> years() {
    return RealisedGain.byYear(lines.stream().map(Line::gain).toList());
  }

  /** Sentences about pieces that are gone and of which something is not known. */
  public List<String> leftOut() {
    return List.copyOf(leftOut);
  }
}
