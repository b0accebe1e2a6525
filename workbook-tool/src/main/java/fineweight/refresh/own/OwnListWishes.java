package fineweight.refresh.own;

import fineweight.valuation.QuotedPayout;
import fineweight.workbook.Workbooks;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lists of his own that the collector named for a run, and single figures that count before
 * them. A list is named by a sheet of the workbook or by a file. Immutable.
 *
 * @param prices a price list
 * @param payouts a list of payouts
 * @param rates a list of exchange rates
 * @param quotes single payouts
 * @param single single rates: units of the prices' currency for one, by ISO 4217 code
 * @param workbooks opens a file
 */
public record OwnListWishes(
    Optional<String> prices,
    Optional<String> payouts,
    Optional<String> rates,
    List<Quote> quotes,
    Map<String, BigDecimal> single,
    Optional<Workbooks> workbooks) {
  /** Only the lists that stand in the workbook itself. */
  public static final OwnListWishes NONE =
      new OwnListWishes(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of(),
          Map.of(),
          Optional.empty());

  /**
   * A payout of one metal.
   *
   * @param metal ISO 4217 code, symbol or name
   * @param pieceClass the collector's word for a class; empty for all that have none of their own
   */
  public record Quote(String metal, String pieceClass, QuotedPayout payout) {}

  /** Whether a text names a metal. */
  public static boolean isMetal(String text) {
    return OwnPayouts.metal(text).isPresent();
  }

  public OwnListWishes {
    quotes = List.copyOf(quotes);
    single = Map.copyOf(single);
  }
}
