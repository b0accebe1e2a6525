package fineweight.refresh.collection;

import fineweight.refresh.inventory.PieceNumbers;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.worth.Lots;
import fineweight.refresh.worth.Worths;
import fineweight.valuation.Worth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;

/** Every piece that is still in the collection, by the place where it is kept. Immutable. */
public final class ByPlace {
  /** What every such list says. */
  public static final String CAUTION =
      "A list of what you own and your own figures for it, and no appraisal: an insurer or an estate may ask for one by somebody licensed. Keep it away from the coins.";

  private final List<Line> lines = new ArrayList<>();

  /**
   * @param worth of all pieces of the line, with its ground; empty where it is not known
   */
  public record Line(SaleLine piece, Optional<Worth> worth) {
    public String place() {
      return piece.keeping().place();
    }

    public Optional<Money> amount() {
      return worth.map(Worth::atCell);
    }
  }

  public ByPlace(List<ReadRow> held, Lots lots, Worths worths, PieceNumbers numbers) {
    for (ReadRow row : held) {
      ForSale.Offer piece =
          new ForSale.Offer(
              row,
              numbers.of(row.row()),
              ForSale.cost(lots, row),
              Optional.empty(),
              worths.melt().result(row.appraisal().content()));
      lines.add(new Line(SaleLine.of(piece), worths.of(row)));
    }
    // The sort is stable: within a place the order of the sheet stays; pieces without one are last.
    lines.sort(
        Comparator.comparing((Line line) -> line.place().isEmpty())
            .thenComparing(line -> line.place().toLowerCase(Locale.ROOT)));
  }

  public List<Line> lines() {
    return List.copyOf(lines);
  }

  /** The places in their order, each once. */
  public List<String> places() {
    return lines.stream().map(Line::place).distinct().toList();
  }

  public List<Line> at(String place) {
    return lines.stream().filter(line -> line.place().equals(place)).toList();
  }
}
