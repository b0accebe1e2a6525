package fineweight.tool;

import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.column.Appraiser;
import fineweight.entry.OpenedInventory;
import fineweight.identification.CoinIdentifier;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.refresh.worth.Spot;
import fineweight.refresh.worth.Worths;
import fineweight.settings.SettingException;
import fineweight.standard.Standards;
import fineweight.table.LotKeeping;
import fineweight.table.OpenedPieces;
import fineweight.table.SetPlaces;
import fineweight.table.TableJournal;
import fineweight.table.TableTalk;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "table",
    description = {
      "Open a lot at the table: type piece after piece and see what each is and holds.",
      "Each is typed as you would say it; its metal and worth are told, where it stands in the type set, and how",
      "the lot stands against its cost. Everything typed is kept at once in a",
      "journal beside the workbook; save puts the pieces as rows under your list, in the columns it has. Nothing below",
      "the list is moved: where something stands in the way, save says what, and save sheet makes a new sheet."
    })
final class TableCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(paramLabel = "WORKBOOK", description = "The inventory that the pieces are put into.")
  private Path file;

  @Mixin private PriceOptions prices;

  @Mixin private CatalogueOptions catalogue;

  @Option(names = "--lot", paramLabel = "NAME", description = "What you call the lot.")
  private String lot;

  @Option(
      names = "--cost",
      paramLabel = "AMOUNT",
      description = "What the whole lot cost, postage and premium included.")
  private BigDecimal cost;

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "The sheet that holds the inventory, if it is not found by itself.")
  private String sheet;

  TableCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws SettingException, WorkbookRefusal, RefreshRefusal, IOException {
    if (cost != null && cost.signum() < 0) {
      throw new SettingException("--cost is zero or more, not " + cost.toPlainString());
    }
    Spot spot = spot();
    Lexicon lexicon = Lexicon.standard();
    Standards standards = catalogue.standards();
    Appraiser appraiser =
        new Appraiser(
            new ClueReader(lexicon),
            new CoinIdentifier(standards, lexicon, catalogue.home(), surroundings.latestYear()),
            spot.prices(),
            standards);
    LotKeeping keeping =
        new LotKeeping(
            surroundings.workbooks(),
            file,
            Optional.ofNullable(sheet),
            appraiser,
            surroundings.today());
    SetPlaces set = set(appraiser);
    try (TableJournal journal = journal(keeping)) {
      OpenedPieces pieces = new OpenedPieces(journal);
      if (pieces.said(TableJournal.Kind.DAY).isEmpty()) {
        pieces.say(TableJournal.Kind.DAY, surroundings.today().toString());
      }
      if (lot != null) {
        pieces.say(TableJournal.Kind.LOT, lot);
      }
      if (cost != null) {
        pieces.say(TableJournal.Kind.COST, cost.toPlainString());
      }
      new TableTalk(pieces, appraiser, new Worths(spot), set, keeping, surroundings.out())
          .talk(surroundings.in());
    }
    return ExitCode.DONE.code();
  }

  private Spot spot() throws SettingException, WorkbookRefusal, RefreshRefusal, IOException {
    try (Workbook workbook = surroundings.workbooks().open(file)) {
      return Spot.of(
          workbook,
          OurMarks.read(workbook.names()),
          prices.prices(surroundings.today(), surroundings.err()::println),
          prices.currencyGiven(),
          prices.wear());
    }
  }

  /** A workbook without an inventory leaves a set that begins with the first piece. */
  private SetPlaces set(Appraiser appraiser) throws WorkbookRefusal, IOException {
    try (Workbook workbook = surroundings.workbooks().open(file)) {
      OpenedInventory list = OpenedInventory.read(workbook, Optional.ofNullable(sheet), appraiser);
      return new SetPlaces(list.held(), list.numbers());
    } catch (RefreshRefusal noInventory) {
      return SetPlaces.ofNothing();
    }
  }

  private TableJournal journal(LotKeeping keeping) throws SettingException, WorkbookRefusal {
    Path place = TableJournal.beside(file);
    try {
      TableJournal journal = TableJournal.open(place);
      if (!keeping.isKept(new OpenedPieces(journal))) {
        return journal;
      }
      // All was kept before the journal could be taken away.
      surroundings.out().println("The pieces typed before were saved; a new lot is begun.");
      journal.delete();
      return TableJournal.open(place);
    } catch (IOException failed) {
      throw new SettingException(
          "the journal "
              + place
              + " cannot be used ("
              + failed.getMessage()
              + "); close the other table, or move the journal away");
    }
  }
}
