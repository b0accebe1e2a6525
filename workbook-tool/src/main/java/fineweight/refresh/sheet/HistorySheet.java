package fineweight.refresh.sheet;

import fineweight.column.MeltFormula;
import fineweight.metal.Metal;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.worth.Spot;
import fineweight.refresh.worth.Totals;
import fineweight.workbook.Cell;
import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.CellPlace;
import fineweight.workbook.CellValue;
import fineweight.workbook.NamedCell;
import fineweight.workbook.PageSetup;
import fineweight.workbook.SheetChart;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetDraft.Kind;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the collection came to on each date of prices: one line a date, added at the end when a
 * figure differs from the line above. Lines of earlier dates are kept as they stand, with whatever
 * their owner wrote into or beside them; only the last line follows its own date's prices as long
 * as that date is refreshed. There is no time of day in it, so the same prices give the same sheet.
 */
public final class HistorySheet {
  private static final int FIRST_ROW = 3;
  private static final int DATE = 0;
  private static final int CURRENCY = 1;
  private static final int FIRST_PRICE = 2;
  private static final int FIRST_OUNCES = 6;
  private static final int LEAST = 10;
  private static final int WIDTH = 13;
  private static final int FEWEST_OF_A_CHART = 5;

  private final String name;
  private final List<List<DraftCell>> kept;

  private HistorySheet(String name, List<List<DraftCell>> kept) {
    this.name = name;
    this.kept = kept;
  }

  /** The sheet as it shall be, after what it holds already. */
  public static HistorySheet of(
      String name, Workbook workbook, OurMarks marks, Spot spot, Totals totals)
      throws WorkbookRefusal {
    List<List<DraftCell>> kept = kept(workbook, marks);
    add(kept, line(spot, totals));
    return new HistorySheet(name, kept);
  }

  private static List<List<DraftCell>> kept(Workbook workbook, OurMarks marks)
      throws WorkbookRefusal {
    List<List<DraftCell>> kept = new ArrayList<>();
    String sheet = marks.sheets().get("history");
    if (sheet != null) {
      workbook.read(
          sheet,
          column -> true,
          Integer.MAX_VALUE,
          cells -> {
            if (!cells.isEmpty() && cells.get(0).place().row() >= FIRST_ROW) {
              kept.add(asItStands(cells));
            }
          });
    }
    return kept;
  }

  private static List<DraftCell> asItStands(List<Cell> cells) {
    List<DraftCell> line = new ArrayList<>();
    for (Cell cell : cells) {
      int column = cell.place().column();
      while (line.size() <= column) {
        line.add(DraftCell.text("", Kind.PLAIN));
      }
      line.set(column, DraftCell.of(content(cell), look(column)));
    }
    return line;
  }

  private static CellContent content(Cell cell) {
    CellValue value = cell.value();
    if (cell.formula().filter(text -> !text.isEmpty()).isPresent()) {
      return value instanceof CellValue.Number number
          ? CellContent.Formula.number(cell.formula().get(), number.value())
          : CellContent.Formula.text(cell.formula().get(), words(value));
    }
    if (value instanceof CellValue.Number number) {
      return new CellContent.Number(number.value());
    }
    return new CellContent.Text(words(value));
  }

  private static String words(CellValue value) {
    if (value instanceof CellValue.Date date) {
      return date.value().toLocalDate().toString();
    }
    if (value instanceof CellValue.Bool bool) {
      return bool.value() ? "yes" : "no";
    }
    if (value instanceof CellValue.Number number) {
      return number.value().toPlainString();
    }
    return value instanceof CellValue.Text text
        ? text.value()
        : value instanceof CellValue.Error error ? error.code() : "";
  }

  private static CellLook look(int column) {
    if (column < FIRST_PRICE || column >= WIDTH) {
      return CellLook.GENERAL;
    }
    return column >= FIRST_OUNCES && column < LEAST ? Lines.OUNCES : Lines.MONEY;
  }

  private static List<DraftCell> line(Spot spot, Totals totals) {
    List<DraftCell> line = new ArrayList<>();
    line.add(Lines.text(spot.prices().date().toString()));
    line.add(Lines.text(spot.prices().currency().getCode()));
    for (Metal metal : Spot.precious()) {
      line.add(Lines.money(spot.prices().of(metal).map(price -> price.perTroyOunce())));
    }
    for (Metal metal : Spot.precious()) {
      BigDecimal ounces = MeltFormula.ounces(totals.content().troyOunces(metal));
      line.add(Lines.number(ounces, Lines.OUNCES));
    }
    line.add(Lines.money(totals.least()));
    line.add(Lines.money(totals.most()));
    line.add(Lines.money(totals.worth()));
    return line;
  }

  private static void add(List<List<DraftCell>> kept, List<DraftCell> today) {
    String date = text(today, DATE);
    int last = kept.size() - 1;
    if (last >= 0 && text(kept.get(last), DATE).equals(date)) {
      List<DraftCell> line = new ArrayList<>(today);
      List<DraftCell> before = kept.get(last);
      line.addAll(before.subList(Math.min(WIDTH, before.size()), before.size()));
      kept.set(last, line);
    } else if (kept.stream().noneMatch(line -> text(line, DATE).equals(date))
        && (last < 0 || differs(kept.get(last), today))) {
      kept.add(today);
    }
  }

  private static boolean differs(List<DraftCell> before, List<DraftCell> today) {
    for (int column = CURRENCY; column < WIDTH; column++) {
      boolean same =
          text(before, column).equals(text(today, column))
              && number(before, column)
                      .orElse(BigDecimal.ZERO)
                      .compareTo(number(today, column).orElse(BigDecimal.ZERO))
                  == 0;
      if (!same) {
        return true;
      }
    }
    return false;
  }

  private static String text(List<DraftCell> line, int column) {
    boolean there = column < line.size();
    return there && line.get(column).content() instanceof CellContent.Text text
        ? text.value().strip()
        : "";
  }

  private static Optional<BigDecimal> number(List<DraftCell> line, int column) {
    boolean there = column < line.size();
    return there && line.get(column).content() instanceof CellContent.Number number
        ? Optional.of(number.value())
        : Optional.empty();
  }

  public SheetDraft draft() {
    Lines lines = new Lines();
    lines.title("History");
    lines.remark(
        "One line for each date of prices, added when a figure differs from the line above. Earlier lines stay as they are.");
    List<String> headings = new ArrayList<>(List.of("Date of the prices", "Currency"));
    Spot.precious().forEach(metal -> headings.add(capital(metal) + " per ozt"));
    Spot.precious().forEach(metal -> headings.add(capital(metal) + " ozt"));
    headings.addAll(List.of("Melt at least", "Melt at most", "Worth"));
    lines.headings(headings);
    kept.forEach(lines::line);
    Map<Integer, Double> widths = new HashMap<>();
    for (int column = 0; column < WIDTH; column++) {
      widths.put(column, column == CURRENCY ? 9.0 : 18.0);
    }
    return new SheetDraft(name, false, lines.rows(), widths, FIRST_ROW, Map.of())
        .printed(PageSetup.wide(FIRST_ROW));
  }

  /**
   * Melt and worth over time; empty until there are five lines in the currency of the last.
   *
   * @param place on the sheet that the chart stands on
   */
  public Optional<SheetChart> chart(SheetChart.Place place) {
    int last = kept.size() - 1;
    int first = last;
    while (first >= 0 && isDrawn(kept.get(first))) {
      first--;
    }
    first++;
    if (last - first + 1 < FEWEST_OF_A_CHART) {
      return Optional.empty();
    }
    int from = FIRST_ROW + first;
    int to = FIRST_ROW + last;
    return Optional.of(
        new SheetChart(
            SheetChart.PREFIX + "history",
            SheetChart.Kind.LINE,
            new SheetChart.Words(
                "Worth and melt over time",
                "Lines of worth and of melt at least, by the date of the prices; the figures stand on the history sheet.",
                "date of the prices",
                text(kept.get(last), CURRENCY),
                "#,##0.00"),
            SheetChart.Range.column(name, DATE, from, to),
            List.of(series(WIDTH - 1, from, to), series(LEAST, from, to)),
            false,
            place));
  }

  private boolean isDrawn(List<DraftCell> line) {
    return number(line, LEAST).isPresent()
        && number(line, WIDTH - 1).isPresent()
        && text(line, CURRENCY).equals(text(kept.get(kept.size() - 1), CURRENCY));
  }

  private SheetChart.Series series(int column, int from, int to) {
    return new SheetChart.Series(
        new CellPlace(name, FIRST_ROW - 1, column),
        SheetChart.Range.column(name, column, from, to));
  }

  static String capital(Metal metal) {
    return metal.word().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
        + metal.word().substring(1);
  }

  public List<NamedCell> names() {
    return List.of(OurMarks.sheet("history", name));
  }
}
