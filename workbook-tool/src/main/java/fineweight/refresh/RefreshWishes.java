package fineweight.refresh;

import fineweight.refresh.collection.SellingTerms;
import fineweight.refresh.column.MoneyCells;
import fineweight.refresh.own.OwnListWishes;
import fineweight.spot.SpotPrices;
import fineweight.standard.Standards;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

/**
 * What the user wants of a run. Immutable.
 *
 * @param prices prices given now, perhaps none; their currency and date count if there are any
 * @param currencyGiven whether the currency was named by the user
 * @param wear the share of metal to take off, if named
 * @param sheet the sheet to fill, if named
 * @param money what money cells hold; a text table has values whatever is wanted
 * @param leaveOutBadRows whether rows with impossible cells are marked and the others filled, or
 *     the run refused
 * @param fillProtected whether a sheet that its owner has protected is filled too
 * @param standards what may be found
 * @param home catalogue key of the country meant where none is named
 * @param latestYear the last year a coin can be dated
 * @param answers the ids of standards chosen now, by the number of the piece
 * @param further what is wanted beyond metal and worth
 */
public record RefreshWishes(
    SpotPrices prices,
    boolean currencyGiven,
    Optional<BigDecimal> wear,
    Optional<String> sheet,
    MoneyCells money,
    boolean leaveOutBadRows,
    boolean fillProtected,
    Standards standards,
    String home,
    int latestYear,
    Map<String, String> answers,
    Further further) {
  public RefreshWishes {
    answers = Map.copyOf(answers);
  }

  /**
   * What is wanted beyond metal and worth.
   *
   * @param set the set to review, such as {@code us}
   * @param selling terms for the least price of what is for sale
   * @param saleList whether the sheet of what is for sale is wanted
   * @param placeList whether the sheet of what is kept where is wanted
   * @param lists the collector's own lists that were named
   */
  public record Further(
      Optional<String> set,
      Optional<SellingTerms> selling,
      boolean saleList,
      boolean placeList,
      OwnListWishes lists) {
    public static final Further NOTHING =
        new Further(Optional.empty(), Optional.empty(), false, false, OwnListWishes.NONE);

    public static Further ofSet(String set) {
      return new Further(Optional.of(set), Optional.empty(), false, false, OwnListWishes.NONE);
    }

    /** These wishes with terms of selling. */
    public Further selling(SellingTerms terms) {
      return new Further(set, Optional.of(terms), true, placeList, lists);
    }

    /** These wishes with lists of the collector's own. */
    public Further withLists(OwnListWishes wanted) {
      return new Further(set, selling, saleList, placeList, wanted);
    }
  }
}
