package fineweight.tool;

import fineweight.label.Label;
import fineweight.label.LabelLayout;
import fineweight.label.LabelWorkbook;
import fineweight.money.WantedGain;
import fineweight.refresh.HolderLabels;
import fineweight.refresh.RefreshWishes;
import fineweight.refresh.collection.LabelPiece;
import fineweight.refresh.collection.SellingTerms;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.sale.FeeSchedule;
import fineweight.settings.SettingException;
import fineweight.spot.SpotPrices;
import fineweight.terminal.ProgressLine;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.joda.money.CurrencyUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "labels",
    description = {
      "Labels for the holders of your coins, on paper as you measure it: a new workbook to print, or a CSV file.",
      "Says what each piece is, its metal and fine weight, its faults, number and place; no price unless you ask for it.",
      "Your workbook is only read."
    })
final class LabelsCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(index = "0", paramLabel = "WORKBOOK", description = "The inventory.")
  private Path file;

  @Parameters(
      index = "1",
      paramLabel = "NEW",
      description =
          "The labels: .xlsx to print, or .csv with a column for each field. An existing file stays.")
  private Path target;

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "The sheet that holds the inventory, if it is not found by itself.")
  private String sheet;

  @Mixin private LabelPaperOptions paper;

  @Mixin private LabelChoiceOptions choice;

  @Option(
      names = "--price",
      description = "Say the least price, on labels of what is for sale only.")
  private boolean priced;

  @Mixin private FeeOptions fees;

  @Mixin private PriceOptions prices;

  @Mixin private CatalogueOptions catalogue;

  LabelsCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws SettingException, WorkbookRefusal, RefreshRefusal, IOException {
    String name = target.toString().toLowerCase(Locale.ROOT);
    boolean text = name.endsWith(".csv");
    if (!text && !name.endsWith(".xlsx")) {
      throw new SettingException(target + ": the labels go into a .xlsx or a .csv file");
    }
    Optional<LabelLayout> layout = text ? Optional.empty() : Optional.of(paper.layout());
    List<LabelPiece> pieces = choice.of(pieces());
    if (pieces.isEmpty()) {
      surroundings.out().println("No piece is of that choice; nothing was written.");
      return ExitCode.DONE.code();
    }
    List<LabelChoiceOptions.Chosen> chosen = choice.labels(pieces, priced);
    if (layout.isPresent()) {
      workbook(layout.get(), chosen);
    } else {
      NewFile.write(target, out -> ListFiles.labels(out, chosen));
      surroundings.out().println("Written: " + target + ", " + number(chosen.size()) + ".");
    }
    choice.remarks(pieces).forEach(surroundings.err()::println);
    return ExitCode.DONE.code();
  }

  private List<LabelPiece> pieces()
      throws SettingException, WorkbookRefusal, RefreshRefusal, IOException {
    SpotPrices given = prices.prices(surroundings.today(), surroundings.err()::println);
    try (ProgressLine line = new ProgressLine(surroundings.err());
        Workbook workbook = surroundings.workbooks().open(file)) {
      return HolderLabels.of(workbook, wishes(given), priced, priced || choice.isApart(), line);
    }
  }

  private RefreshWishes wishes(SpotPrices given) throws SettingException {
    SellingTerms terms = fees.terms(given.currency()).orElseGet(() -> costBack(given.currency()));
    return ReadingWishes.of(
        given,
        sheet,
        prices,
        catalogue,
        surroundings.latestYear(),
        RefreshWishes.Further.NOTHING.selling(terms));
  }

  private static SellingTerms costBack(CurrencyUnit currency) {
    return new SellingTerms(FeeSchedule.none(currency), WantedGain.none());
  }

  private void workbook(LabelLayout layout, List<LabelChoiceOptions.Chosen> chosen)
      throws WorkbookRefusal {
    List<Label> labels = new ArrayList<>();
    chosen.forEach(each -> labels.add(each.label()));
    LabelWorkbook workbook = new LabelWorkbook(layout, labels, paper.skipped());
    NewFile.workbook(target, workbook::write);
    PrintWriter out = surroundings.out();
    out.println(
        "Written: "
            + target
            + ", "
            + number(labels.size())
            + " of "
            + layout.label().words()
            + " on "
            + (workbook.pages() == 1 ? "1 page" : workbook.pages() + " pages")
            + ", "
            + layout.across()
            + " across and "
            + layout.down()
            + " down.");
    out.println("Print it at 100 %, not fitted to the page, on plain paper first.");
    for (int full : workbook.tooFull()) {
      surroundings
          .err()
          .println(
              "The label of piece "
                  + chosen.get(full).piece().number()
                  + " may be too small for its words: take a larger --size, or fewer words with --text.");
    }
  }

  private static String number(int labels) {
    return labels == 1 ? "1 label" : labels + " labels";
  }
}
