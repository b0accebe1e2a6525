package fineweight.tool;

import fineweight.lot.Bid;
import fineweight.lot.BuyingTerms;
import fineweight.lot.LotCost;
import fineweight.money.Amounts;
import fineweight.money.WantedGain;
import fineweight.refresh.RefreshWishes;
import fineweight.refresh.RefreshWishes.Further;
import fineweight.refresh.RoughLot;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.settings.SettingException;
import fineweight.spot.SpotPrices;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "bid",
    description = {
      "Tell what may be bid for a lot, from a rough list of it.",
      "It is the most to pay, so that premium, tax, postage and what you want to earn are covered. Low and high where a piece is open. Writes nothing."
    })
final class BidCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(
      paramLabel = "LIST",
      description =
          "The rough list: a workbook or CSV with headings, or a .txt file with one kind of piece on each line.")
  private Path file;

  @Mixin private PriceOptions prices;

  @Mixin private CatalogueOptions catalogue;

  @Mixin private OwnListOptions lists;

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "The sheet that holds the list, if it is not found by itself.")
  private String sheet;

  @Option(
      names = "--premium",
      paramLabel = "PERCENT",
      description = "Buyer's premium, per cent of the bid.")
  private BigDecimal premium = BigDecimal.ZERO;

  @Option(
      names = "--tax",
      paramLabel = "PERCENT",
      description = "Tax, per cent of bid and premium.")
  private BigDecimal tax = BigDecimal.ZERO;

  @Option(names = "--postage", paramLabel = "AMOUNT", description = "Postage and insurance.")
  private BigDecimal postage = BigDecimal.ZERO;

  @Option(names = "--tax-on-postage", description = "The tax falls on the postage too.")
  private boolean taxOnPostage;

  @Option(
      names = "--margin",
      paramLabel = "PERCENT",
      description = "What the lot shall earn, in per cent of its worth.")
  private BigDecimal margin;

  @Option(
      names = "--markup",
      paramLabel = "PERCENT",
      description = "What the lot shall earn, in per cent of its whole cost.")
  private BigDecimal markup;

  BidCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws SettingException, WorkbookRefusal, RefreshRefusal, IOException {
    RoughLot lot = lot();
    if (lot.spot().prices().isEmpty()) {
      throw new SettingException(
          "no price is given: add --spot XAG=30.00 --spot XAU=2500.00, or --spot-file prices.json");
    }
    print(lot, bid(lot));
    lot.remarks().forEach(surroundings.err()::println);
    return ExitCode.DONE.code();
  }

  private RoughLot lot() throws SettingException, WorkbookRefusal, RefreshRefusal, IOException {
    boolean words = file.toString().toLowerCase(Locale.ROOT).endsWith(".txt");
    if (words) {
      return RoughLot.ofWords(lines(), wishes());
    }
    try (Workbook workbook = surroundings.workbooks().open(file)) {
      return RoughLot.of(workbook, wishes());
    }
  }

  private List<String> lines() throws SettingException {
    try {
      return Files.readAllLines(file, StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new SettingException(
          file + " cannot be read as UTF-8 text; check its name and save it as UTF-8");
    }
  }

  private RefreshWishes wishes() throws SettingException {
    SpotPrices given = prices.prices(surroundings.today(), surroundings.err()::println);
    Further further = Further.NOTHING.withLists(lists.wishes(surroundings.workbooks()));
    return ReadingWishes.of(given, sheet, prices, catalogue, surroundings.latestYear(), further);
  }

  private Bid bid(RoughLot lot) throws SettingException {
    if (margin != null && markup != null) {
      throw new SettingException("give --margin or --markup, not both");
    }
    CurrencyUnit currency = lot.spot().currency();
    try {
      WantedGain wanted =
          margin != null
              ? new WantedGain.Margin(margin)
              : markup != null ? new WantedGain.Markup(markup) : WantedGain.none();
      Money fixed = Amounts.atCell(BigMoney.of(currency, postage));
      BuyingTerms terms = new BuyingTerms(premium, tax, fixed, taxOnPostage);
      return Bid.of(terms, wanted, lot.least(), lot.most());
    } catch (IllegalArgumentException impossible) {
      throw new SettingException(impossible.getMessage());
    }
  }

  private void print(RoughLot lot, Bid bid) {
    PrintWriter out = surroundings.out();
    for (RoughLot.Line line : lot.lines()) {
      String low = words(line.worth().low().worth().atCell());
      String high = words(line.worth().high().worth().atCell());
      out.printf(
          "%5d  %20s  %s%n",
          line.number(), low.equals(high) ? low : low + " to " + high, line.words());
      if (!line.note().isEmpty()) {
        out.println("                             ? " + line.note());
      }
    }
    out.println();
    String worth = Amounts.words(lot.least());
    out.println(
        "worth "
            + (lot.open() == 0
                ? worth
                : "at least "
                    + worth
                    + ", at most "
                    + Amounts.words(lot.most())
                    + ", "
                    + lot.open()
                    + " open")
            + " at the spot prices of "
            + lot.spot().date());
    out.println("bid " + bid.sentence() + ".");
    bid.low().ifPresent(cost -> parts("", cost));
    if (!lot.least().isEqual(lot.most())) {
      bid.high().ifPresent(cost -> parts("if every open piece is the better one: ", cost));
    }
    out.println("A figure for your own use: worth rests on metal, face value and your own prices.");
  }

  private void parts(String before, LotCost cost) {
    surroundings
        .out()
        .println(
            "  "
                + before
                + "bid "
                + words(cost.price())
                + " + premium "
                + words(cost.premium())
                + " + tax "
                + words(cost.tax())
                + " + postage "
                + words(cost.postage())
                + " = "
                + Amounts.words(cost.total()));
  }

  private static String words(Money money) {
    return money.getAmount().toPlainString();
  }
}
