package fineweight.refresh.worth;

import fineweight.column.MeltFormula;
import fineweight.metal.Metal;
import fineweight.quantity.MassUnit;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.spot.SpotPrice;
import fineweight.spot.SpotPrices;
import fineweight.workbook.Cell;
import fineweight.workbook.CellPlace;
import fineweight.workbook.CellValue;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/**
 * The prices of a run: those given now before those that stand in the workbook's own spot sheet.
 * Immutable.
 *
 * @param prices what counts
 * @param wear the share of the metal taken off for wear, 0 to less than 1
 * @param fromWorkbook metals whose price was taken from the spot sheet
 */
public record Spot(SpotPrices prices, BigDecimal wear, List<Metal> fromWorkbook) {
  private static final List<Metal> PRECIOUS =
      List.of(Metal.GOLD, Metal.SILVER, Metal.PLATINUM, Metal.PALLADIUM);

  public static List<Metal> precious() {
    return PRECIOUS;
  }

  /** The base metals that are priced. */
  public List<Metal> base() {
    return prices.prices().keySet().stream().filter(metal -> !metal.isPrecious()).toList();
  }

  /**
   * @param given prices of this run; may be empty of prices but has currency and date
   * @param currencyGiven whether the user named the currency
   * @param wearGiven the share, if the user named one
   */
  public static Spot of(
      Workbook workbook,
      OurMarks marks,
      SpotPrices given,
      boolean currencyGiven,
      Optional<BigDecimal> wearGiven)
      throws WorkbookRefusal, RefreshRefusal {
    Map<String, CellValue> stored = stored(workbook, marks);
    Optional<CurrencyUnit> storedCurrency = currency(stored.get("currency"));
    boolean sameCurrency =
        storedCurrency.isEmpty()
            || storedCurrency.get().equals(given.currency())
            || (!currencyGiven && given.prices().isEmpty());
    CurrencyUnit currency =
        given.prices().isEmpty() && !currencyGiven
            ? storedCurrency.orElse(given.currency())
            : given.currency();
    Map<Metal, SpotPrice> prices = new EnumMap<>(Metal.class);
    List<Metal> fromWorkbook = new ArrayList<>();
    if (sameCurrency) {
      for (Metal metal : Metal.values()) {
        Optional<BigDecimal> price =
            price(stored.get(metal.ounceCode().orElse(metal.symbol())), metal, workbook);
        if (price.isPresent() && given.of(metal).isEmpty()) {
          MassUnit unit = metal.isPrecious() ? MassUnit.TROY_OUNCE : MassUnit.TONNE;
          prices.put(metal, new SpotPrice(metal, price.get(), currency, unit));
          fromWorkbook.add(metal);
        }
      }
    }
    prices.putAll(given.prices());
    LocalDate date =
        given.prices().isEmpty() ? date(stored.get("date")).orElse(given.date()) : given.date();
    BigDecimal wear = wearGiven.or(() -> share(stored.get("wear"))).orElse(BigDecimal.ZERO);
    return new Spot(new SpotPrices(currency, date, prices), wear, fromWorkbook);
  }

  private static Map<String, CellValue> stored(Workbook workbook, OurMarks marks)
      throws WorkbookRefusal {
    Map<String, CellValue> values = new HashMap<>();
    String sheet = marks.sheets().get("spot");
    if (sheet == null) {
      return values;
    }
    Map<CellPlace, CellValue> cells = new HashMap<>();
    workbook.read(sheet, column -> true, 200, row -> row.forEach(cell -> put(cells, cell)));
    marks
        .values()
        .forEach(
            (name, place) -> {
              if (cells.containsKey(place)) {
                values.put(name, cells.get(place));
              }
            });
    return values;
  }

  private static void put(Map<CellPlace, CellValue> cells, Cell cell) {
    cells.put(cell.place(), cell.value());
  }

  private static Optional<CurrencyUnit> currency(CellValue value) {
    if (value instanceof CellValue.Text text) {
      try {
        return Optional.of(CurrencyUnit.of(text.value().strip()));
      } catch (IllegalCurrencyException unknown) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static Optional<LocalDate> date(CellValue value) {
    if (value instanceof CellValue.Date date) {
      return Optional.of(date.value().toLocalDate());
    }
    if (value instanceof CellValue.Text text && text.value().matches("\\d{4}-\\d{2}-\\d{2}")) {
      return Optional.of(LocalDate.parse(text.value()));
    }
    return Optional.empty();
  }

  private static Optional<BigDecimal> share(CellValue value) {
    if (value instanceof CellValue.Number number) {
      boolean possible =
          number.value().signum() >= 0 && number.value().compareTo(BigDecimal.ONE) < 0;
      return possible ? Optional.of(number.value()) : Optional.empty();
    }
    return Optional.empty();
  }

  private static Optional<BigDecimal> price(CellValue value, Metal metal, Workbook workbook)
      throws RefreshRefusal {
    if (value instanceof CellValue.Number number && number.value().signum() > 0) {
      return Optional.of(number.value());
    }
    boolean blank = value == null || value instanceof CellValue.Blank;
    if (!blank) {
      throw new RefreshRefusal(
          RefreshRefusal.Kind.NO_PRICES,
          workbook.path()
              + ": the price of "
              + metal.word()
              + " in the spot sheet ("
              + MeltFormula.priceName(metal)
              + ") is no number above zero; correct it or give --spot "
              + metal.ounceCode().orElse(metal.symbol())
              + "=PRICE.");
    }
    return Optional.empty();
  }
}
