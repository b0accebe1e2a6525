package fineweight.tool;

import fineweight.refresh.RefreshWishes;
import fineweight.refresh.column.MoneyCells;
import fineweight.result.FileResult;
import fineweight.result.RunResult;
import fineweight.settings.SettingException;
import fineweight.spot.SpotPrices;
import fineweight.workbook.CellChange;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.Workbooks;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
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

  @Parameters(
      arity = "1..*",
      paramLabel = "WORKBOOK",
      description = {
        "The inventory: .xlsx, .xlsm, .xls or .csv. Several, or a folder of them, get one summary;",
        "one that cannot be filled does not stop the others."
      })
  private List<Path> named;

  @Mixin private PriceOptions prices;

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "The sheet that holds the inventory, if it is not found by itself.")
  private String sheet;

  @Option(names = "--dry-run", description = "Show every cell that would change; write nothing.")
  private boolean dryRun;

  @ArgGroup(multiplicity = "0..1")
  private MoneyChoice money = new MoneyChoice();

  /** What the money columns hold, if not live formulas. */
  private static final class MoneyChoice {
    @Option(
        names = "--values-only",
        description = "Put values into the money columns instead of live formulas.")
    private boolean valuesOnly;

    @Option(
        names = "--add-in-formulas",
        description =
            "Let the melt column call FINEWEIGHT.MELT of the add-in for LibreOffice. The values are stored too, so they show where the add-in is missing.")
    private boolean addInFormulas;

    MoneyCells cells() {
      return valuesOnly
          ? MoneyCells.VALUES
          : addInFormulas ? MoneyCells.ADD_IN_FORMULAS : MoneyCells.LIVE_FORMULAS;
    }
  }

  @Option(
      names = "--leave-out-bad-rows",
      description =
          "Fill the other rows even if some cells hold an error, a negative count or an impossible year.")
  private boolean leaveOutBadRows;

  @Option(
      names = "--fill-protected",
      description = "Fill a sheet that is protected against changes too; its protection is kept.")
  private boolean fillProtected;

  @Mixin private CatalogueOptions catalogue;

  @Mixin private SellingOptions selling;

  @Option(names = "--no-cells", description = "With --dry-run: leave out the list of cells.")
  private boolean noCells;

  @Mixin private OwnListOptions lists;

  @Option(names = "--quiet", description = "Print nothing but complaints.")
  private boolean quiet;

  @Mixin private ResultOption result;

  @Mixin private PasswordOption password;

  RefreshCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws SettingException {
    result.refuseOver(named);
    RunResult run;
    try {
      run = run();
    } catch (SettingException | WorkbookRefusal unusable) {
      Complaint complaint = Complaint.of(unusable);
      surroundings.err().println(complaint.sentence());
      run =
          new RunResult(
              complaint.code().code(), Optional.of(complaint.sentence()), List.of(), List.of());
    }
    result.write(run, surroundings.out());
    return run.exitCode();
  }

  private RunResult run() throws SettingException, WorkbookRefusal {
    WorkbookFiles files = WorkbookFiles.of(named);
    result.refuseOver(files.files());
    boolean many = files.areMany();
    if (many) {
      selling.refuseLists();
    }
    List<String> warnings = new ArrayList<>();
    SpotPrices given = prices.prices(surroundings.today(), warnings::add);
    warnings.forEach(surroundings.err()::println);
    Workbooks workbooks =
        dryRun ? surroundings.workbooks().with(password.passwords()) : surroundings.workbooks();
    FileRun each =
        new FileRun(surroundings, workbooks, wishes(given, files.files().get(0)), manner(many));
    List<FileResult> results = new ArrayList<>();
    for (Path file : files.files()) {
      results.add(each.run(file, files.inFolders().contains(file)));
    }
    RunTold told = new RunTold(surroundings.err(), words(), surroundings.screen().width());
    int code = many ? told.many(results, dryRun) : told.one(results.get(0), dryRun);
    if (!many && !dryRun && results.get(0).report().isPresent()) {
      selling.write(results.get(0).report().get());
    }
    return new RunResult(code, Optional.empty(), warnings, results);
  }

  private RefreshWishes wishes(SpotPrices given, Path file) throws SettingException {
    return new RefreshWishes(
        given,
        prices.currencyGiven(),
        prices.wear(),
        Optional.ofNullable(sheet),
        money.cells(),
        leaveOutBadRows,
        fillProtected,
        catalogue.standards(),
        catalogue.home(),
        surroundings.latestYear(),
        Map.of(),
        selling.wishes(given.currency(), file).withLists(lists.wishes(surroundings.workbooks())));
  }

  private FileRun.Manner manner(boolean many) {
    return new FileRun.Manner(
        dryRun, quiet, many || noCells ? Optional.empty() : Optional.of(this::print));
  }

  /** Where words for a person go; nowhere if they are not wanted. */
  private PrintWriter words() {
    return quiet
        ? new PrintWriter(Writer.nullWriter())
        : result.words(surroundings.out(), surroundings.screen());
  }

  private void print(CellChange change) {
    words()
        .println(change.place() + ": " + quoted(change.before()) + " -> " + quoted(change.after()));
  }

  private static String quoted(String text) {
    return text.isEmpty() ? "(empty)" : "\"" + text + "\"";
  }
}
