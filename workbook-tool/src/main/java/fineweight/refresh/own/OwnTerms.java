package fineweight.refresh.own;

import fineweight.money.Amounts;
import fineweight.price.ExchangeRates;
import fineweight.price.PriceList;
import fineweight.valuation.Payouts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What the collector's own lists say. Immutable.
 *
 * @param remarks sentences about lines that were left out or contradict each other
 */
public record OwnTerms(
    PriceList prices, Payouts payouts, ExchangeRates rates, List<String> remarks) {
  public OwnTerms {
    remarks = List.copyOf(remarks);
  }

  /**
   * A figure of money in another currency, rounded as in a cell.
   *
   * @param code ISO 4217 code it is in; empty for the wanted currency
   * @return empty if there is no rate
   */
  public Optional<Money> money(BigDecimal figure, String code, CurrencyUnit wanted) {
    Optional<CurrencyUnit> unit =
        code.isEmpty() ? Optional.of(wanted) : ExchangeRates.currency(code);
    return unit.flatMap(given -> rates.convert(BigMoney.of(given, figure), wanted))
        .map(Amounts::atCell);
  }

  /** The same terms with other remarks. */
  public OwnTerms remarking(List<String> others) {
    return new OwnTerms(prices, payouts, rates, others);
  }

  /** A class of payout in comparable form. */
  public static String pieceClass(String words) {
    return OwnPayouts.pieceClass(words);
  }

  /** No list, everything at full melt. */
  public static OwnTerms none(CurrencyUnit currency, LocalDate date) {
    return new OwnTerms(
        PriceList.of(List.of()), Payouts.atMelt(), ExchangeRates.of(currency, date), List.of());
  }
}
