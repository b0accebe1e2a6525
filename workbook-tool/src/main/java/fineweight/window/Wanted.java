package fineweight.window;

import fineweight.metal.Metal;
import fineweight.refresh.RefreshWishes;
import fineweight.refresh.column.MoneyCells;
import fineweight.settings.SettingException;
import fineweight.settings.SpotFile;
import fineweight.settings.SpotText;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import fineweight.standard.Standards;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/**
 * What the fields of the window say. Immutable.
 *
 * @param file the workbook
 * @param sheet the sheet to fill, if one was chosen
 * @param prices the texts of the price fields by metal, such as {@code 30.00} or {@code 964.50/kg};
 *     blank ones are left to the workbook's own spot sheet
 * @param otherPrices prices of further metals, such as {@code Cu=9500/t Ni=15000/t}
 * @param currency ISO 4217 code; blank where the workbook's own is meant
 * @param leaveOutBadRows whether rows with impossible cells are left out or stop the run
 */
record Wanted(
    Path file,
    Optional<String> sheet,
    Map<Metal, String> prices,
    String otherPrices,
    String currency,
    boolean leaveOutBadRows) {
  Wanted {
    prices = Map.copyOf(prices);
  }

  /**
   * @param today the date of the prices
   * @throws SettingException if a price or the currency cannot be used
   */
  RefreshWishes wishes(Standards standards, String home, LocalDate today) throws SettingException {
    String code = currency.strip().toUpperCase(Locale.ROOT);
    CurrencyUnit unit =
        code.isEmpty() ? CurrencyUnit.USD : SpotFile.currency(code, "the field Currency");
    return new RefreshWishes(
        prices(unit, today),
        !code.isEmpty(),
        Optional.empty(),
        sheet,
        MoneyCells.LIVE_FORMULAS,
        leaveOutBadRows,
        false,
        standards,
        home,
        today.getYear() + 1,
        Map.of(),
        RefreshWishes.Further.NOTHING);
  }

  private SpotPrices prices(CurrencyUnit unit, LocalDate today) throws SettingException {
    List<SpotPrice> read = new ArrayList<>();
    for (Metal metal : Metal.values()) {
      String typed = prices.getOrDefault(metal, "").strip();
      if (!typed.isEmpty()) {
        read.add(SpotText.parse(metal.symbol() + "=" + typed, unit));
      }
    }
    for (String typed : otherPrices.strip().split("[\\s;]+")) {
      if (!typed.isEmpty()) {
        read.add(SpotText.parse(typed, unit));
      }
    }
    try {
      return SpotPrices.of(unit, today, read);
    } catch (IllegalArgumentException twice) {
      throw new SettingException("the fields of prices: " + twice.getMessage());
    }
  }
}
