package fineweight.settings;

import fineweight.metal.Metal;
import fineweight.quantity.MassUnit;
import fineweight.spot.SpotPrice;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import org.joda.money.CurrencyUnit;

/**
 * Reads a price as people write it: {@code XAG=30.00}, {@code Ag=30/ozt}, {@code Cu=9500/t}. The
 * unit is part of the price.
 */
public final class SpotText {
  private static final Map<String, MassUnit> UNITS =
      Map.of(
          "ozt", MassUnit.TROY_OUNCE,
          "g", MassUnit.GRAM,
          "kg", MassUnit.KILOGRAM,
          "t", MassUnit.TONNE,
          "lb", MassUnit.POUND,
          "dwt", MassUnit.PENNYWEIGHT,
          "gr", MassUnit.GRAIN);

  private SpotText() {}

  /**
   * @throws SettingException if the text is not of this form, the metal is unknown, or the price is
   *     not more than zero
   */
  public static SpotPrice parse(String text, CurrencyUnit currency) throws SettingException {
    int equals = text.indexOf('=');
    if (equals < 0) {
      throw new SettingException(
          "the price \"" + text + "\" has no equals sign; write it as XAG=30.00 or Cu=9500/t");
    }
    String code = text.substring(0, equals).strip();
    String[] parts = text.substring(equals + 1).strip().split("/", 2);
    Metal metal =
        Metal.ofCode(code)
            .orElseThrow(
                () ->
                    new SettingException(
                        "\""
                            + code
                            + "\" is no metal; use XAU, XAG, XPT, XPD or a symbol such as Cu"));
    MassUnit unit = unit(parts.length > 1 ? parts[1] : "", metal);
    return price(metal, parts[0].strip(), currency, unit);
  }

  /** A unit by its sign; the troy ounce where none is given and the metal is traded by it. */
  public static MassUnit unit(String sign, Metal metal) throws SettingException {
    String plain = sign.strip().toLowerCase(Locale.ROOT);
    if (plain.isEmpty() && metal.isPrecious()) {
      return MassUnit.TROY_OUNCE;
    }
    MassUnit unit = UNITS.get(plain);
    if (unit == null) {
      throw new SettingException(
          plain.isEmpty()
              ? "the price of "
                  + metal.word()
                  + " needs its unit: write "
                  + metal.symbol()
                  + "=.../t, /kg, /lb or /g"
              : "\"" + sign + "\" is no unit of mass here; use ozt, g, kg, t or lb");
    }
    return unit;
  }

  public static SpotPrice price(Metal metal, String amount, CurrencyUnit currency, MassUnit unit)
      throws SettingException {
    BigDecimal number;
    try {
      number = new BigDecimal(amount);
    } catch (NumberFormatException notANumber) {
      throw new SettingException(
          amount.isEmpty()
              ? "no price is given for " + metal.word()
              : "\""
                  + amount
                  + "\" is no price for "
                  + metal.word()
                  + "; write a number such as 30.25");
    }
    if (number.signum() <= 0) {
      throw new SettingException(
          "the price of "
              + metal.word()
              + " must be more than zero, not "
              + number.toPlainString());
    }
    return new SpotPrice(metal, number, currency, unit);
  }
}
