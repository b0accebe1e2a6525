package fineweight.sale;

import fineweight.money.Gain;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.joda.money.Money;

/**
 * What was gained on pieces that are gone: what came in for them less the cost they carried. How a
 * tax office reckons it is another matter. Immutable.
 *
 * @param key the row's key
 * @param state sold, returned or traded
 * @param date the day they went
 * @param pieces how many
 * @param received after fees
 * @param cost their share of the cost
 * @param gain received less cost
 */
public record RealisedGain(
    String key,
    SaleState state,
    LocalDate date,
    int pieces,
    Money received,
    Money cost,
    Gain gain) {
  /**
   * The gains of one year.
   *
   * @param year of the dates
   * @param pieces how many went
   * @param received after fees
   * @param cost their shares of the cost
   * @param gain received less cost
   */
  public record Year(int year, int pieces, Money received, Money cost, Gain gain) {}

  /**
   * Added up by year, the earliest first. Returned pieces are left out: a purchase undone is no
   * sale.
   *
   * @throws org.joda.money.CurrencyMismatchException if a year has more than one currency
   */
  public static List<Year> byYear(List<RealisedGain> gains) {
    Map<Integer, List<RealisedGain>> grouped = new TreeMap<>();
    for (RealisedGain gain : gains) {
      if (gain.state() != SaleState.RETURNED) {
        grouped.computeIfAbsent(gain.date().getYear(), year -> new ArrayList<>()).add(gain);
      }
    }
    return grouped.entrySet().stream().map(year -> sum(year.getKey(), year.getValue())).toList();
  }

  private static Year sum(int year, List<RealisedGain> gains) {
    Money received = Money.total(gains.stream().map(RealisedGain::received).toList());
    Money cost = Money.total(gains.stream().map(RealisedGain::cost).toList());
    int pieces = gains.stream().mapToInt(RealisedGain::pieces).sum();
    return new Year(year, pieces, received, cost, Gain.of(received, cost));
  }
}
