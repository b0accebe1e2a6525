package fineweight.refresh.worth;

import fineweight.lot.WrittenCost;
import fineweight.money.Amounts;
import fineweight.refresh.inventory.ReadRow;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The inventory's rows by lot, in the order in which the lots appear. */
public final class Lots {
  private final Map<String, Lot> lots = new LinkedHashMap<>();
  private final Map<Integer, Money> shares = new HashMap<>();

  private Lots() {}

  /**
   * @param ownFigures what their owner wrote elsewhere as the cost of a whole lot, by lot, in the
   *     currency of the prices
   */
  public static Lots of(List<ReadRow> rows, Worths worths, Map<String, BigDecimal> ownFigures) {
    Map<String, List<ReadRow>> byLot = new LinkedHashMap<>();
    for (ReadRow row : rows) {
      if (row.isCoin()) {
        byLot.computeIfAbsent(row.money().lot(), unused -> new ArrayList<>()).add(row);
      }
    }
    Lots lots = new Lots();
    byLot.forEach(
        (name, members) ->
            lots.add(lot(name, members, worths, Optional.ofNullable(ownFigures.get(name)))));
    return lots;
  }

  private void add(Lot lot) {
    lots.put(lot.name(), lot);
    List<Optional<Money>> carried = lot.shares();
    for (int i = 0; i < carried.size(); i++) {
      int row = lot.rows().get(i).read().row();
      carried.get(i).ifPresent(share -> shares.put(row, share));
    }
  }

  private static Lot lot(
      String name, List<ReadRow> members, Worths worths, Optional<BigDecimal> own) {
    Totals totals = new Totals(worths);
    members.stream().flatMap(row -> row.held().stream()).forEach(totals::add);
    CurrencyUnit currency = worths.currency();
    List<Lot.Row> rows =
        members.stream()
            .map(
                row ->
                    new Lot.Row(
                        row,
                        row.held().map(worths::range),
                        Sold.net(row, currency).orElse(Money.zero(currency))))
            .toList();
    return new Lot(name, rows, totals, currency, cost(name, members, worths, own));
  }

  private static Optional<WrittenCost> cost(
      String name, List<ReadRow> members, Worths worths, Optional<BigDecimal> own) {
    CurrencyUnit currency = worths.currency();
    List<Optional<Money>> figures = new ArrayList<>();
    for (ReadRow row : members) {
      Optional<BigDecimal> cost = row.money().cost();
      Optional<Money> converted =
          cost.flatMap(amount -> worths.own().money(amount, row.money().currency(), currency));
      if (cost.isPresent() && converted.isEmpty()) {
        // A cost in a currency without a rate leaves the lot's cost unknown.
        return Optional.empty();
      }
      figures.add(converted);
    }
    boolean eachItsOwn = name.isEmpty() || members.stream().anyMatch(row -> row.money().ofRow());
    List<Money> written = figures.stream().flatMap(Optional::stream).toList();
    if (eachItsOwn && own.isEmpty() && !written.isEmpty()) {
      return Optional.of(
          new WrittenCost.Known(
              Money.total(written), WrittenCost.Place.EACH_ROW, "the costs of the rows added up"));
    }
    return Optional.of(WrittenCost.of(figures, own.map(cost -> money(cost, currency))));
  }

  private static Money money(BigDecimal amount, CurrencyUnit currency) {
    return Amounts.atCell(BigMoney.of(currency, amount));
  }

  public List<Lot> all() {
    return List.copyOf(lots.values());
  }

  /** Whether a lot has one cost for several rows. */
  public boolean haveCostToShare() {
    return lots.values().stream().anyMatch(Lot::hasCostToShare);
  }

  /** What the row (from 0) carries of its lot's cost; empty where that is not known. */
  public Optional<Money> share(int row) {
    return Optional.ofNullable(shares.get(row));
  }
}
