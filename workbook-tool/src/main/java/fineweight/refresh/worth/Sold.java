package fineweight.refresh.worth;

import fineweight.money.Amounts;
import fineweight.refresh.inventory.ReadRow;
import java.math.BigDecimal;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What pieces that are gone brought. */
public final class Sold {
  private Sold() {}

  /**
   * What is left of the price after the fees of the sale; empty if the row is still there or no
   * price is written.
   */
  public static Optional<Money> net(ReadRow row, CurrencyUnit currency) {
    if (!row.isCoin() || !row.fate().kind().isGone()) {
      return Optional.empty();
    }
    BigDecimal fees = row.fate().fees().orElse(BigDecimal.ZERO);
    return row.fate()
        .soldFor()
        .map(price -> Amounts.atCell(BigMoney.of(currency, price.subtract(fees))))
        .filter(Money::isPositiveOrZero);
  }
}
