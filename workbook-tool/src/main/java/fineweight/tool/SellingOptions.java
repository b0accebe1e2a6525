package fineweight.tool;

import fineweight.refresh.RefreshReport;
import fineweight.refresh.RefreshWishes;
import fineweight.refresh.collection.SellingTerms;
import fineweight.settings.SettingException;
import java.nio.file.Path;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options about what to keep, what to sell and what a sale must bring. */
final class SellingOptions {
  @Option(
      names = "--set",
      paramLabel = "SET",
      description = {
        "Review the collection as a set of types: which piece fills a hole, improves or duplicates,",
        "what to keep and what to sell. us: one coin of each design of the United States;",
        "\"dates: Mercury dime; mints none, D, S\": every date and mint of a coin; or a sheet or file of your own with",
        "the headings Place, Coin, Years, Mints. A sheet that looks so is found by itself.",
        "Once asked for, every later run keeps the set's sheet up to date."
      })
  private String set;

  @Mixin private FeeOptions fees;

  @Option(
      names = "--sale-list",
      paramLabel = "FILE",
      description = "Write what is for sale to a CSV file, and to a sheet of the workbook.")
  private Path saleList;

  @Option(
      names = "--place-list",
      paramLabel = "FILE",
      description = {
        "Write what is kept where, dated, for an insurer and for those who inherit, to a CSV file",
        "and to a sheet of the workbook, which later runs keep up to date."
      })
  private Path placeList;

  @Option(
      names = "--gains",
      paramLabel = "FILE",
      description = "Write the gains on pieces that are gone, by year, to a CSV file.")
  private Path gains;

  /**
   * @throws SettingException if an option cannot be used
   */
  RefreshWishes.Further wishes(CurrencyUnit currency, Path workbook) throws SettingException {
    refuseSameFile(saleList, "--sale-list", workbook);
    refuseSameFile(placeList, "--place-list", workbook);
    refuseSameFile(gains, "--gains", workbook);
    Optional<SellingTerms> terms = fees.terms(currency);
    return new RefreshWishes.Further(
        Optional.ofNullable(set),
        terms,
        saleList != null || terms.isPresent(),
        placeList != null,
        fineweight.refresh.own.OwnListWishes.NONE);
  }

  private static void refuseSameFile(Path list, String option, Path workbook)
      throws SettingException {
    if (list != null
        && list.toAbsolutePath().normalize().equals(workbook.toAbsolutePath().normalize())) {
      throw new SettingException(option + " names the workbook itself; choose another file");
    }
  }

  /**
   * @throws SettingException if a list is wanted, which can be of one workbook only
   */
  void refuseLists() throws SettingException {
    if (saleList != null || gains != null) {
      throw new SettingException(
          (saleList != null ? "--sale-list" : "--gains")
              + " is written for one workbook at a time; name one");
    }
  }

  /** Writes the lists that were asked for. */
  void write(RefreshReport report) throws SettingException {
    if (saleList != null) {
      ListFiles.saleList(saleList, report);
    }
    if (placeList != null) {
      ListFiles.placeList(placeList, report);
    }
    if (gains != null) {
      ListFiles.gains(gains, report);
    }
  }
}
