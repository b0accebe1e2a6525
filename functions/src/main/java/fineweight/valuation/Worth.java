package fineweight.valuation;

import fineweight.money.Amounts;
import java.util.Objects;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * What a row of pieces is worth, and why. Immutable.
 *
 * @param money for all pieces of the row, exact
 * @param basis the ground
 * @param sentence the ground in words, with the figures that were compared
 */
public record Worth(BigMoney money, Basis basis, String sentence) {
  public Worth {
    money = Amounts.normal(money);
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(sentence, "sentence");
  }

  /** Rounded half up to the currency's smallest unit. */
  public Money atCell() {
    return Amounts.atCell(money);
  }
}
