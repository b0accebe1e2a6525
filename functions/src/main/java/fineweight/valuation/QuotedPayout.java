package fineweight.valuation;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

/**
 * What a buyer pays, as a person writes it: {@code 95 %}, {@code 102%}, {@code -0.50/ozt}, {@code
 * +1/piece}. Sums are in the currency of the prices. Immutable.
 *
 * @param figure per cent, zero or more; or the sum added to melt, of either sign
 * @param unit what the figure is for
 */
public record QuotedPayout(BigDecimal figure, Unit unit) {
  private static final Pattern FORM =
      Pattern.compile(
          "([+-]?\\d+(?:[.,]\\d+)?)\\s*(?:(%|percent|per cent)(?: of melt)?"
              + "|(?:/|an? |per )\\s*(ozt|oz|ounce|troy ounce|pc|pcs|piece|coin))");

  /** What a quoted figure is for. */
  public enum Unit {
    PERCENT,
    OUNCE,
    PIECE
  }

  /**
   * @throws IllegalArgumentException if the figure is a percentage below zero
   */
  public QuotedPayout {
    Objects.requireNonNull(figure, "figure");
    if (unit == Unit.PERCENT && figure.signum() < 0) {
      throw new IllegalArgumentException("a payout is zero or more per cent, not " + figure);
    }
  }

  /**
   * Reads a quote.
   *
   * @throws IllegalArgumentException if the text is of none of these forms
   */
  public static QuotedPayout read(String text) {
    Matcher form = FORM.matcher(text.strip().toLowerCase(Locale.ROOT).replace('−', '-'));
    if (!form.matches()) {
      throw new IllegalArgumentException(
          "\"" + text.strip() + "\" is no payout; write 95 %, -0.50/ozt or +1/piece");
    }
    BigDecimal figure = new BigDecimal(form.group(1).replace(',', '.'));
    if (form.group(2) != null) {
      return new QuotedPayout(figure, Unit.PERCENT);
    }
    boolean ounce = form.group(3).contains("oz") || form.group(3).contains("ounce");
    return new QuotedPayout(figure, ounce ? Unit.OUNCE : Unit.PIECE);
  }

  /** The payout, with its sums in a currency. */
  public Payout in(CurrencyUnit currency) {
    return switch (unit) {
      case PERCENT -> new Payout.PercentOfMelt(figure);
      case OUNCE -> new Payout.PerOunce(BigMoney.of(currency, figure));
      case PIECE -> new Payout.PerPiece(BigMoney.of(currency, figure));
    };
  }
}
