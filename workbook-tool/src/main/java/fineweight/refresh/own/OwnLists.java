package fineweight.refresh.own;

import fineweight.column.Appraiser;
import fineweight.price.ExchangeRates;
import fineweight.price.PriceList;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.spot.SpotPrices;
import fineweight.standard.Standards;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds the collector's own lists: those he named, and sheets of the workbook that look so. */
public final class OwnLists {
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
    return workbook.sheets().stream()
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
