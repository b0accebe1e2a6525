package fineweight.refresh.own;

import fineweight.column.Appraiser;
import fineweight.price.ExchangeRates;
import fineweight.price.PriceList;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.spot.SpotPrices;
import fineweight.standard.CoinStandard;
import fineweight.standard.Standards;
import fineweight.typeset.DateAndMintSet;
import fineweight.typeset.TypeSet;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the collector's own lists: those he named, and sheets of the workbook that look so. */
public final class OwnLists {
  private static final String DATES = "dates:";
  private static final Pattern WITH_MINTS =
      Pattern.compile("([^;]+?)\\s*(?:;\\s*mints?:?\\s*(.+))?", Pattern.CASE_INSENSITIVE);

  private final Workbook workbook;
  private final OwnListWishes wishes;
  private final Map<ListKind, String> sheets = new EnumMap<>(ListKind.class);
  private final List<String> remarks = new ArrayList<>();

  private OwnLists(Workbook workbook, OwnListWishes wishes) {
    this.workbook = workbook;
    this.wishes = wishes;
  }

  /** Looks at every sheet that is not ours and has none of our columns. */
  public static OwnLists find(Workbook workbook, OurMarks marks, OwnListWishes wishes)
      throws WorkbookRefusal {
    OwnLists lists = new OwnLists(workbook, wishes);
    List<String> theirs =
        workbook.sheets().stream()
            .filter(SheetSummary::isTable)
            .map(SheetSummary::name)
            .filter(name -> !marks.isOurs(name) && marks.columnsIn(name).isEmpty())
            .toList();
    // A workbook with one sheet of its owner's has nothing but the inventory.
    if (theirs.size() > 1 || !marks.columns().isEmpty()) {
      for (String sheet : theirs) {
        lists.look(sheet);
      }
    }
    return lists;
  }

  /** Only the lists that were named as files. */
  public static OwnLists ofFiles(OwnListWishes wishes) {
    return new OwnLists(null, wishes);
  }

  private void look(String sheet) throws WorkbookRefusal {
    for (ListKind kind : ListKind.values()) {
      if (OwnTable.isOne(workbook, sheet, kind)) {
        String first = sheets.putIfAbsent(kind, sheet);
        if (first != null) {
          remarks.add(
              workbook.path()
                  + ": the sheets \""
                  + first
                  + "\" and \""
                  + sheet
                  + "\" both look like a "
                  + kind.words()
                  + "; the first one is used. Rename the other one's headings if that is wrong.");
        }
        return;
      }
    }
  }

  /** The sheets that are such lists, or were named as one, and so no inventory. */
  public Set<String> sheets() {
    Set<String> all = new HashSet<>(sheets.values());
    for (Optional<String> named : List.of(wishes.prices(), wishes.payouts(), wishes.rates())) {
      named.flatMap(this::sheet).ifPresent(all::add);
    }
    return all;
  }

  private Optional<String> sheet(String name) {
    List<SheetSummary> all = workbook == null ? List.of() : workbook.sheets();
    return all.stream()
        .filter(SheetSummary::isTable)
        .map(SheetSummary::name)
        .filter(sheet -> !sheet.isEmpty() && sheet.equalsIgnoreCase(name))
        .findFirst();
  }

  /**
   * Reads the lists.
   *
   * @throws RefreshRefusal if a list that was named is not there or lacks its headings
   */
  public OwnTerms terms(SpotPrices spot, Appraiser appraiser, Standards standards)
      throws WorkbookRefusal, RefreshRefusal {
    List<String> all = new ArrayList<>(remarks);
    ExchangeRates rates = ExchangeRates.of(spot.currency(), spot.date());
    Optional<OwnTable> rateTable = table(ListKind.RATES, wishes.rates());
    if (rateTable.isPresent()) {
      rates = new OwnRates(rateTable.get(), all).read(spot.currency(), spot.date());
    }
    rates = withSingle(rates, spot);
    OwnPayouts payouts = new OwnPayouts(spot.currency(), all);
    table(ListKind.PAYOUTS, wishes.payouts()).ifPresent(payouts::addAll);
    wishes.quotes().forEach(payouts::add);
    PriceList prices = PriceList.of(List.of());
    Optional<OwnTable> priceTable = table(ListKind.PRICES, wishes.prices());
    if (priceTable.isPresent()) {
      CoinWords coins = new CoinWords(appraiser, standards);
      prices = new OwnPrices(priceTable.get(), coins, rates, spot.currency(), all).read();
    }
    return new OwnTerms(prices, payouts.payouts(), rates, all);
  }

  /** What a set is made of. */
  public record SetSources(Appraiser appraiser, Standards standards, String home, int lastYear) {}

  /**
   * The set that is wanted: {@code us}, {@code dates:} and a coin's words, or a list of places in a
   * sheet or a file; without a wish a sheet that looks like one.
   *
   * @param terms takes the remarks on lines that cannot be used
   * @throws RefreshRefusal if there is no such set
   */
  public Optional<TypeSet> set(Optional<String> wanted, SetSources sources, List<String> terms)
      throws WorkbookRefusal, RefreshRefusal {
    String name = wanted.orElse("").strip();
    CoinWords coins = new CoinWords(sources.appraiser(), sources.standards());
    if (name.equalsIgnoreCase("us")) {
      return Optional.of(TypeSet.unitedStates());
    }
    if (name.toLowerCase(Locale.ROOT).startsWith(DATES)) {
      Matcher form = WITH_MINTS.matcher(name.substring(DATES.length()).strip());
      List<CoinStandard> meant =
          form.matches() ? coins.meant(form.group(1), Optional.empty()) : List.of();
      if (meant.isEmpty()) {
        throw noSet(name);
      }
      TypeSet dates =
          DateAndMintSet.of("every date and mint of " + form.group(1), meant, sources.lastYear());
      return Optional.of(
          form.group(2) == null
              ? dates
              : DateAndMintSet.ofMints(dates, OwnSet.mints(form.group(2))));
    }
    if (!name.isEmpty() && sheet(name).isEmpty() && !Files.isRegularFile(Path.of(name))) {
      throw noSet(name);
    }
    return table(ListKind.PLACES, wanted)
        .map(
            table ->
                new OwnSet(table, coins, sources.standards(), sources.home(), terms)
                    .read(name.isEmpty() ? sheets.get(ListKind.PLACES) : name));
  }

  private static RefreshRefusal noSet(String name) {
    return new RefreshRefusal(
        RefreshRefusal.Kind.OPTION,
        "--set: \""
            + name
            + "\" is no set; write us, the name of your sheet or file with the places of a set, or"
            + " \"dates: Mercury dime; mints none, D, S\" for every date and mint of a coin.");
  }

  /** Single rates are for one, in the currency of the prices; they need that as their base. */
  private ExchangeRates withSingle(ExchangeRates listed, SpotPrices spot) throws RefreshRefusal {
    if (wishes.single().isEmpty()) {
      return listed;
    }
    if (!listed.base().equals(spot.currency())) {
      throw new RefreshRefusal(
          RefreshRefusal.Kind.OPTION,
          "--rate gives a rate in "
              + spot.currency()
              + ", but your list of rates goes by "
              + listed.base()
              + "; put the rate into the list.");
    }
    ExchangeRates rates = listed;
    for (Map.Entry<String, java.math.BigDecimal> single : wishes.single().entrySet()) {
      var currency = ExchangeRates.currency(single.getKey());
      if (currency.isPresent() && !currency.get().equals(rates.base())) {
        rates = rates.withBaseForOne(currency.get(), single.getValue());
      }
    }
    return rates;
  }

  /** The list that was named, else the one that was found. */
  Optional<OwnTable> table(ListKind kind, Optional<String> named)
      throws WorkbookRefusal, RefreshRefusal {
    if (named.isEmpty()) {
      String sheet = sheets.get(kind);
      return sheet == null ? Optional.empty() : OwnTable.read(workbook, sheet, kind);
    }
    Optional<String> sheet = sheet(named.get());
    Optional<OwnTable> table =
        sheet.isPresent()
            ? OwnTable.read(workbook, sheet.get(), kind)
            : ofFile(Path.of(named.get()), kind);
    if (table.isEmpty()) {
      throw new RefreshRefusal(
          RefreshRefusal.Kind.OPTION,
          "\""
              + named.get()
              + "\" has no row of headings of a "
              + kind.words()
              + " in its first 20 rows; the headings are "
              + kind.needed()
              + ".");
    }
    return table;
  }

  private Optional<OwnTable> ofFile(Path file, ListKind kind) throws WorkbookRefusal {
    if (wishes.workbooks().isEmpty()) {
      return Optional.empty();
    }
    try (Workbook opened = wishes.workbooks().get().open(file)) {
      return OwnTable.read(opened, kind);
    } catch (java.io.IOException closing) {
      throw new java.io.UncheckedIOException("cannot close " + file, closing);
    }
  }
}
