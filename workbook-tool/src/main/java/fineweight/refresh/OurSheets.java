package fineweight.refresh;

import fineweight.column.InputColumn;
import fineweight.refresh.collection.SaleLine;
import fineweight.refresh.inventory.Answers;
import fineweight.refresh.sheet.ByPlaceSheet;
import fineweight.refresh.sheet.HistorySheet;
import fineweight.refresh.sheet.LotsSheet;
import fineweight.refresh.sheet.OpeningSheet;
import fineweight.refresh.sheet.ReviewSheet;
import fineweight.refresh.sheet.SaleListSheet;
import fineweight.refresh.sheet.SpotSheet;
import fineweight.refresh.sheet.TotalsSheet;
import fineweight.refresh.sheet.TypeSetSheet;
import fineweight.refresh.worth.Groups;
import fineweight.workbook.FileFormat;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.WorkbookRefusal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The sheets of our own that a run puts into the workbook, and their names. */
final class OurSheets {
  private static final Map<String, String> TITLES =
      Map.of("set", "type set", "sale", "for sale", "place", "by place");

  private final Reckoning reckoning;
  private final List<SheetDraft> drafts = new ArrayList<>();
  private final List<NamedCell> names = new ArrayList<>();

  OurSheets(Reckoning reckoning) {
    this.reckoning = reckoning;
  }

  List<SheetDraft> drafts() {
    return drafts;
  }

  List<NamedCell> names() {
    return names;
  }

  void addAll(Answers answers) throws WorkbookRefusal {
    SpotSheet spot = new SpotSheet(name("spot"), reckoning.spot());
    add(spot.draft(), spot.names());
    HistorySheet history =
        HistorySheet.of(
            name("history"),
            reckoning.workbook(),
            reckoning.marks(),
            reckoning.spot(),
            reckoning.totals());
    totals(history);
    if (hasLots()) {
      lots();
    }
    review();
    if (!answers.byPiece().isEmpty() || has("answers")) {
      add(answers.draft(name("answers")), Answers.names(name("answers")));
    }
    if (reckoning.set().isPresent()) {
      TypeSetSheet set =
          new TypeSetSheet(
              name("set"),
              reckoning.set().get(),
              reckoning.spot().prices(),
              reckoning.inventory().sheet(),
              setAsked());
      add(set.draft(), set.names());
    }
    if (reckoning.further().saleList()) {
      SaleListSheet sale =
          new SaleListSheet(
              name("sale"),
              reckoning.spot(),
              reckoning.forSale().offers().stream().map(SaleLine::of).toList(),
              reckoning.further().selling(),
              reckoning.inventory().sheet());
      add(sale.draft(), sale.names());
    }
    if (reckoning.further().placeList() || has("place")) {
      ByPlaceSheet place = new ByPlaceSheet(name("place"), reckoning.spot(), reckoning.byPlace());
      add(place.draft(), place.names());
    }
    add(history.draft(), history.names());
  }

  private boolean hasLots() {
    return reckoning.inventory().table().first(InputColumn.LOT).isPresent();
  }

  private boolean takesCharts() {
    return reckoning.workbook().format() != FileFormat.XLS;
  }

  private void totals(HistorySheet history) {
    TotalsSheet totals =
        new TotalsSheet(
            name("totals"),
            reckoning.spot(),
            reckoning.totals(),
            new Groups(reckoning.worths(), reckoning.held()),
            hasLots() ? Optional.of(reckoning.lots()) : Optional.empty());
    add(totals.draft(takesCharts(), history.chart(TotalsSheet.OVER_TIME)), totals.names());
  }

  private void lots() {
    LotsSheet lots =
        new LotsSheet(
            name("lots"), reckoning.spot(), reckoning.lots(), reckoning.lotCosts().typed());
    add(lots.draft(), lots.names());
    OpeningSheet opening =
        new OpeningSheet(name("opening"), reckoning.lots(), reckoning.inventory().sheet());
    if (!opening.isEmpty() || has("opening")) {
      add(opening.draft(takesCharts()), opening.names());
    }
  }

  private Optional<String> setAsked() throws WorkbookRefusal {
    Optional<String> now = reckoning.further().set();
    return now.isPresent()
        ? now
        : TypeSetSheet.askedBefore(reckoning.workbook(), reckoning.marks());
  }

  private void review() {
    ReviewSheet review =
        new ReviewSheet(
            name("review"),
            reckoning.inventory().sheet(),
            reckoning.reader().rows(),
            reckoning.worths().melt(),
            row -> reckoning.numbers().of(row.row()));
    if (!review.isEmpty() || has("review")) {
      add(review.draft(), review.names());
    }
  }

  private void add(SheetDraft draft, List<NamedCell> namesOfIt) {
    drafts.add(draft);
    names.addAll(namesOfIt);
  }

  private boolean has(String purpose) {
    return reckoning.marks().sheets().containsKey(purpose);
  }

  /** Our sheet's name: the one it has, or a free one. */
  private String name(String purpose) {
    String existing = reckoning.marks().sheets().get(purpose);
    Set<String> taken = new HashSet<>();
    for (SheetSummary sheet : reckoning.workbook().sheets()) {
      taken.add(sheet.name().toLowerCase(Locale.ROOT));
    }
    if (existing != null && taken.contains(existing.toLowerCase(Locale.ROOT))) {
      return existing;
    }
    String wanted = "Fineweight " + TITLES.getOrDefault(purpose, purpose);
    String name = wanted;
    for (int i = 2; taken.contains(name.toLowerCase(Locale.ROOT)); i++) {
      name = wanted + " " + i;
    }
    return name;
  }
}
