package fineweight.tool;

import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.column.Appraiser;
import fineweight.identification.CoinIdentifier;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.refresh.worth.Spot;
import fineweight.refresh.worth.Worths;
import fineweight.settings.SettingException;
import fineweight.standard.Standards;
import fineweight.table.OpenedPieces;
import fineweight.table.TableJournal;
import fineweight.table.TableTalk;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "table",
    description = {
      "Open a lot at the table: type piece after piece as you would say it, see what each is, its metal and worth,",
      "and how the lot stands against its cost. Everything typed is kept at once in a journal beside the workbook;",
      "save puts it into a list of its own beside it. Your workbook itself is only read, for its prices."
    })
final class TableCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(paramLabel = "WORKBOOK", description = "The inventory beside which the list is put.")
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
    try (TableJournal journal = journal()) {
      OpenedPieces pieces = new OpenedPieces(journal);
      if (lot != null) {
        pieces.say(TableJournal.Kind.LOT, lot);
      }
      if (cost != null) {
        pieces.say(TableJournal.Kind.COST, cost.toPlainString());
      }
      new TableTalk(pieces, appraiser, new Worths(spot), file, surroundings.out())
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

  private TableJournal journal() throws SettingException {
    Path place = TableJournal.beside(file);
    try {
      TableJournal journal = TableJournal.open(place);
      String list = new OpenedPieces(journal).said(TableJournal.Kind.LIST);
      if (list.isEmpty() || !Files.exists(place.resolveSibling(list))) {
        return journal;
      }
      // The list was complete before the journal could be taken away.
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
