package fineweight.tool;

import fineweight.refresh.Refresh;
import fineweight.refresh.RefreshReport;
import fineweight.refresh.RefreshWishes;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.settings.SettingException;
import fineweight.spot.SpotPrices;
import fineweight.workbook.CellChange;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "refresh",
    description = {
      "Fill the calculated columns of an inventory workbook at given spot prices.",
      "The inventory and its headings are found wherever they are; nothing else in the workbook changes, and a backup is kept."
    })
final class RefreshCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(paramLabel = "WORKBOOK", description = "The inventory: .xlsx, .xlsm, .xls or .csv.")
  private Path file;

  @Mixin private PriceOptions prices;

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "The sheet that holds the inventory, if it is not found by itself.")
  private String sheet;

  @Option(names = "--dry-run", description = "Show every cell that would change; write nothing.")
  private boolean dryRun;

  @Option(
      names = "--values-only",
      description = "Put values into the money columns instead of live formulas.")
  private boolean valuesOnly;

  @Option(
      names = "--leave-out-bad-rows",
      description =
          "Fill the other rows even if some cells hold an error, a negative count or an impossible year.")
  private boolean leaveOutBadRows;

  @Mixin private CatalogueOptions catalogue;

  @Mixin private SellingOptions selling;

  @Mixin private OwnListOptions lists;

  @Option(names = "--quiet", description = "Print nothing but complaints.")
  private boolean quiet;

  RefreshCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws SettingException, WorkbookRefusal, RefreshRefusal, IOException {
    SpotPrices given = prices.prices(surroundings.today());
    RefreshWishes wishes =
        new RefreshWishes(
            given,
            prices.currencyGiven(),
            prices.wear(),
            Optional.ofNullable(sheet),
            valuesOnly,
            leaveOutBadRows,
            catalogue.standards(),
            catalogue.home(),
            surroundings.latestYear(),
            Map.of(),
            selling
                .wishes(given.currency(), file)
                .withLists(lists.wishes(surroundings.workbooks())));
    ReportWords words = new ReportWords(surroundings.out());
    try (Workbook workbook = surroundings.workbooks().open(file)) {
      if (dryRun) {
        RefreshReport report = Refresh.preview(workbook, wishes, this::print);
        words.print(report, true);
      } else {
        RefreshReport report = Refresh.run(workbook, wishes);
        selling.write(report);
        if (!quiet) {
          words.print(report, false);
        }
        report.badCells().forEach(surroundings.err()::println);
        report.selling().gains().leftOut().forEach(surroundings.err()::println);
      }
    }
    return ExitCode.DONE.code();
  }

  private void print(CellChange change) {
    if (!quiet) {
      surroundings
          .out()
          .println(
              change.place() + ": " + quoted(change.before()) + " -> " + quoted(change.after()));
    }
  }

  private static String quoted(String text) {
    return text.isEmpty() ? "(empty)" : "\"" + text + "\"";
  }
}
