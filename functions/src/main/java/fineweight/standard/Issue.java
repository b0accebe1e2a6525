package fineweight.standard;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * Who struck a coin, as what, and when. Immutable.
 *
 * @param country ISO 3166 code, or the name of a former issuer
 * @param denominations the denomination and its second names, at least one
 * @param faceValue in units of the currency, if the coin has one
 * @param currency ISO 4217 code or the unit's name; may be empty
 * @param types the names of the types, in the trade's words; may be empty
 * @param years the dates on the coins
 * @param mints the mint marks
 */
public record Issue(
    String country,
    List<String> denominations,
    Optional<BigDecimal> faceValue,
    String currency,
    List<String> types,
    Years years,
    Mints mints) {
  public Issue {
    denominations = List.copyOf(denominations);
    types = List.copyOf(types);
    if (denominations.isEmpty()) {
      throw new IllegalArgumentException("a denomination is needed");
    }
  }

  /** The first denomination: the one to show. */
  public String denomination() {
    return denominations.get(0);
  }
}
