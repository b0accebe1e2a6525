package fineweight.tool;

import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.column.Appraiser;
import fineweight.entry.OpenedInventory;
import fineweight.entry.SplitRows;
import fineweight.identification.CoinIdentifier;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.settings.SettingException;
import fineweight.spot.SpotPrices;
import fineweight.standard.Standards;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.joda.money.CurrencyUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "split",
    description = {
      "Give each coin of a line with several dates, such as \"3 merc dimes 40 42 45-D\", a row of its own.",
      "The first coin keeps the row, its number, cost and prices; the others come under the list, where nothing",
      "is moved or overwritten. Lines that do not come apart without a doubt are named and stay; a backup is kept."
    })
final class SplitCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(paramLabel = "WORKBOOK", description = "The inventory.")
  private Path file;

  @Option(
      names = "--dry-run",
      description = "List the lines and the rows that would be added; write nothing.")
  private boolean dryRun;

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "The sheet that holds the inventory, if it is not found by itself.")
  private String sheet;

  @Mixin private CatalogueOptions catalogue;

  SplitCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws SettingException, WorkbookRefusal, RefreshRefusal, IOException {
    PrintWriter out = surroundings.out();
    Appraiser appraiser = appraiser();
    try (Workbook workbook = surroundings.workbooks().open(file)) {
      OpenedInventory list = OpenedInventory.read(workbook, Optional.ofNullable(sheet), appraiser);
      SplitRows rows = SplitRows.of(workbook, list, appraiser);
      rows.leftAlone().forEach(line -> out.println("Stays as it is: " + line));
      rows.splits().forEach(split -> tell(split, out));
      if (rows.splits().isEmpty()) {
        out.println("No line holds several coins that can be told apart; nothing was written.");
        return ExitCode.DONE.code();
      }
      WorkbookEdit edit = WorkbookEdit.of(rows.edit());
      if (dryRun) {
        workbook.preview(edit, change -> {});
        out.println(counted(rows) + " would be added; nothing was written.");
      } else {
        Workbook.SaveResult saved = workbook.save(edit);
        out.println(counted(rows) + " added " + where(rows.edit()) + ".");
        out.println(
            "The file as it was is kept as "
                + saved.backup().getFileName()
                + ". fineweight refresh fills metal and worth.");
      }
    }
    return ExitCode.DONE.code();
  }

  private Appraiser appraiser() throws SettingException {
    Lexicon lexicon = Lexicon.standard();
    Standards standards = catalogue.standards();
    return new Appraiser(
        new ClueReader(lexicon),
        new CoinIdentifier(standards, lexicon, catalogue.home(), surroundings.latestYear()),
        SpotPrices.of(CurrencyUnit.USD, surroundings.today(), List.of()),
        standards);
  }

  private static void tell(SplitRows.Split split, PrintWriter out) {
    out.println("Row " + (split.row() + 1) + ", " + split.words() + ":");
    out.println("  stays here:  " + split.coins().get(0));
    split.coins().stream().skip(1).forEach(words -> out.println("  new row:     " + words));
  }

  private static String counted(SplitRows rows) {
    int number = rows.edit().rows().size();
    return number == 1 ? "1 row" : number + " rows";
  }

  private static String where(RowsEdit edit) {
    return "under row "
        + (edit.lastRow() + 1)
        + (edit.sheet().isEmpty() ? "" : " of sheet \"" + edit.sheet() + "\"");
  }
}
