package fineweight.tool;

import fineweight.refresh.RefreshWishes;
import fineweight.refresh.RefreshWishes.Further;
import fineweight.refresh.column.MoneyCells;
import fineweight.settings.SettingException;
import fineweight.spot.SpotPrices;
import java.util.Map;
import java.util.Optional;

/** What a command wishes that reads an inventory and fills nothing: bad rows are left out. */
final class ReadingWishes {
  private ReadingWishes() {}

  /**
   * @param sheet null to find it
   */
  static RefreshWishes of(
      SpotPrices given,
      String sheet,
      PriceOptions prices,
      CatalogueOptions catalogue,
      int latestYear,
      Further further)
      throws SettingException {
    return new RefreshWishes(
        given,
        prices.currencyGiven(),
        prices.wear(),
        Optional.ofNullable(sheet),
        MoneyCells.LIVE_FORMULAS,
        true,
        false,
        catalogue.standards(),
        catalogue.home(),
        latestYear,
        Map.of(),
        further);
  }
}
