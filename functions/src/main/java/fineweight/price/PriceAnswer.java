package fineweight.price;

import fineweight.money.Amounts;
import fineweight.valuation.OwnPrice;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.BigMoney;

/** What a price list says of a piece: a price with its ground, or why it has none. */
public sealed interface PriceAnswer {
  /** The ground, or the reason, in words. */
  String sentence();

  /**
   * A price.
   *
   * @param each for one piece, exact
   * @param asOf the day of the older line it rests on; empty if a line has no date
   * @param sentence the lines it rests on, their age and origin
   */
  record Found(BigMoney each, Optional<LocalDate> asOf, String sentence) implements PriceAnswer {
    public Found {
      each = Amounts.normal(each);
      Objects.requireNonNull(asOf, "asOf");
      Objects.requireNonNull(sentence, "sentence");
    }

    /** The form in which a piece takes it. */
    public OwnPrice asOwnPrice() {
      return OwnPrice.listed(each, sentence);
    }
  }

  /**
   * No price.
   *
   * @param sentence what the list lacks
   */
  record NotListed(String sentence) implements PriceAnswer {
    public NotListed {
      Objects.requireNonNull(sentence, "sentence");
    }
  }
}
