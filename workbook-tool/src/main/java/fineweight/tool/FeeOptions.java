package fineweight.tool;

import fineweight.money.WantedGain;
import fineweight.refresh.collection.SellingTerms;
import fineweight.sale.FeeSchedule;
import fineweight.settings.FeeFile;
import fineweight.settings.SettingException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import picocli.CommandLine.Option;

/** The options about what selling costs and shall bring. */
final class FeeOptions {
  @Option(
      names = "--fees",
      paramLabel = "FILE",
      description = {
        "JSON file with what selling costs you: a column tells the least price of what is for sale.",
        "Example: {\"currency\": \"USD\", \"commission\": \"12.5 up to 1000; 9\", \"fixed\": \"0.50\"}"
      })
  private Path fees;

  @Option(
      names = "--margin",
      paramLabel = "PERCENT",
      description =
          "What a sale shall leave beyond the cost, in per cent of its price; 0 if absent.")
  private BigDecimal margin;

  /**
   * The terms that were named; empty if none was.
   *
   * @throws SettingException if an option cannot be used
   */
  Optional<SellingTerms> terms(CurrencyUnit currency) throws SettingException {
    if (fees == null && margin == null) {
      return Optional.empty();
    }
    FeeSchedule schedule = fees == null ? FeeSchedule.none(currency) : FeeFile.read(fees, currency);
    try {
      return Optional.of(
          new SellingTerms(
              schedule, margin == null ? WantedGain.none() : new WantedGain.Margin(margin)));
    } catch (IllegalArgumentException impossible) {
      throw new SettingException("--margin: " + impossible.getMessage());
    }
  }
}
