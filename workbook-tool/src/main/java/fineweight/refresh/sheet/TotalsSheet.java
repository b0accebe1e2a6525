package fineweight.refresh.sheet;

import fineweight.column.MeltFormula;
import fineweight.metal.Metal;
import fineweight.refresh.inventory.OurMarks;
import fineweight.refresh.worth.Groups;
import fineweight.refresh.worth.Lots;
import fineweight.refresh.worth.Spot;
import fineweight.refresh.worth.Totals;
import fineweight.workbook.CellPlace;
import fineweight.workbook.NamedCell;
import fineweight.workbook.PageSetup;
import fineweight.workbook.SheetChart;
import fineweight.workbook.SheetChart.Range;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the collection comes to, by metal, state, lot and type, on one page, with the charts of fine
 * ounces and of worth over time. Every division adds up to the line of all pieces.
 */
public final class TotalsSheet {
  /** More lots or types than a person reads one by one. */
  private static final int MOST_LINES = 40;

  private static final int HEADINGS = 3;
  private static final int ALL = 4;
  private static final int FIRST_METAL = 3;
  private static final int CHART_TOP = 6;
  private static final int CHART_BOTTOM = 22;

  /** Where the chart of another sheet's figures has its place on this one. */
  public static final SheetChart.Place OVER_TIME =
      new SheetChart.Place(4, CHART_TOP, 11, CHART_BOTTOM);

  private static final SheetChart.Place OUNCES =
      new SheetChart.Place(0, CHART_TOP, 4, CHART_BOTTOM);

  private final String name;
  private final Spot spot;
  private final Totals all;
  private final Groups groups;
  private final Optional<Lots> lots;
  private final List<Metal> metals;

  /**
   * @param lots empty where the inventory has no column for them
   */
  public TotalsSheet(String name, Spot spot, Totals all, Groups groups, Optional<Lots> lots) {
    this.name = name;
    this.spot = spot;
    this.all = all;
    this.groups = groups;
    this.lots = lots;
    this.metals = Spot.precious().stream().filter(this::isShown).toList();
  }

  private boolean isShown(Metal metal) {
    boolean usual = metal == Metal.GOLD || metal == Metal.SILVER;
    return usual || all.content().troyOunces(metal).signum() > 0;
  }

  /**
   * @param charts whether the kind of file takes charts
   * @param overTime the chart of worth over time; empty as long as there are too few lines
   */
  public SheetDraft draft(boolean charts, Optional<SheetChart> overTime) {
    List<SheetChart> drawn = charts ? charts(overTime) : List.of();
    Lines lines = new Lines();
    head(lines, charts);
    while (!drawn.isEmpty() && lines.size() < CHART_BOTTOM) {
      lines.blank();
    }
    section(lines, "By metal", groups.byMetal());
    section(lines, "By state", groups.byState());
    lots.map(this::byLot).ifPresent(sums -> section(lines, "By lot", sums));
    section(lines, "By type", groups.byType());
    return new SheetDraft(name, false, lines.rows(), widths(), HEADINGS + 1, Map.of())
        .with(drawn)
        .printed(PageSetup.wide(HEADINGS + 1));
  }

  private void head(Lines lines, boolean charts) {
    lines.title("Totals at the spot prices of " + spot.prices().date());
    lines.line(List.of(Lines.text(sentence())));
    lines.remark(
        "Pieces that are gone do not count. Refresh after changing a price: these figures are those of the last refresh."
            + (charts
                ? ""
                : " A .xls file gets no charts: save it as .xlsx and refresh to have them."));
    lines.headings(headings("All"));
    lines.line(line("All pieces", all).stream().map(Lines::total).toList());
  }

  private String sentence() {
    String currency = spot.prices().currency().getCode();
    String open = all.open() + (all.open() == 1 ? " row open." : " rows open.");
    return "Melt is "
        + range(all.least(), all.most())
        + " "
        + currency
        + ", worth is "
        + range(all.worth(), all.mostWorth())
        + " "
        + currency
        + "; "
        + open;
  }

  private static String range(BigDecimal least, BigDecimal most) {
    return least.compareTo(most) == 0
        ? least.toPlainString()
        : "at least " + least.toPlainString() + ", at most " + most.toPlainString();
  }

  private List<String> headings(String first) {
    String currency = spot.prices().currency().getCode();
    List<String> headings = new ArrayList<>(List.of(first, "Rows", "Pieces"));
    metals.forEach(metal -> headings.add(HistorySheet.capital(metal) + " ozt"));
    for (String money :
        List.of("Melt at least", "Melt at most", "Worth at least", "Worth at most")) {
      headings.add(money + " " + currency);
    }
    headings.add("Open rows");
    return headings;
  }

  private List<DraftCell> line(String label, Totals sum) {
    List<DraftCell> line = new ArrayList<>();
    line.add(Lines.text(label));
    line.add(Lines.whole(sum.rows()));
    line.add(Lines.whole(sum.pieces()));
    for (Metal metal : metals) {
      BigDecimal ounces = MeltFormula.ounces(sum.content().troyOunces(metal));
      line.add(Lines.number(ounces, Lines.OUNCES));
    }
    line.add(Lines.money(sum.least()));
    line.add(Lines.money(sum.most()));
    line.add(Lines.money(sum.worth()));
    line.add(Lines.money(sum.mostWorth()));
    line.add(Lines.whole(sum.open()));
    return line;
  }

  private void section(Lines lines, String title, Map<String, Totals> sums) {
    lines.blank();
    lines.headings(headings(title));
    List<Totals> rest = new ArrayList<>();
    int shown = sums.size() <= MOST_LINES ? MOST_LINES : MOST_LINES - 1;
    for (Map.Entry<String, Totals> each : sums.entrySet()) {
      if (shown-- > 0) {
        lines.line(line(each.getKey(), each.getValue()));
      } else {
        rest.add(each.getValue());
      }
    }
    if (!rest.isEmpty()) {
      lines.line(line(rest.size() + " others together", groups.together(rest)));
    }
  }

  private Map<String, Totals> byLot(Lots found) {
    Map<String, Totals> sums = new LinkedHashMap<>();
    found.all().stream()
        .filter(lot -> lot.totals().rows() > 0)
        .forEach(lot -> sums.put(lot.isNamed() ? lot.name() : "(no lot)", lot.totals()));
    return sums;
  }

  private List<SheetChart> charts(Optional<SheetChart> overTime) {
    List<SheetChart> charts = new ArrayList<>();
    if (metals.stream().anyMatch(metal -> all.content().troyOunces(metal).signum() > 0)) {
      charts.add(ounces());
    }
    overTime.ifPresent(charts::add);
    return charts;
  }

  private SheetChart ounces() {
    int last = FIRST_METAL + metals.size() - 1;
    return new SheetChart(
        SheetChart.PREFIX + "ounces",
        SheetChart.Kind.BAR,
        new SheetChart.Words(
            "Fine troy ounces by metal",
            "Bars of the fine troy ounces of each metal in all pieces; the figures stand in the line All pieces above.",
            "",
            "fine troy ounces",
            "#,##0.00"),
        Range.row(name, HEADINGS, FIRST_METAL, last),
        List.of(
            new SheetChart.Series(
                new CellPlace(name, ALL, 0), Range.row(name, ALL, FIRST_METAL, last))),
        true,
        OUNCES);
  }

  private Map<Integer, Double> widths() {
    Map<Integer, Double> widths = new HashMap<>();
    int columns = headings("").size();
    for (int column = 1; column < columns; column++) {
      widths.put(column, column < FIRST_METAL ? 8.0 : 19.0);
    }
    for (int column = FIRST_METAL; column < FIRST_METAL + metals.size(); column++) {
      widths.put(column, 13.0);
    }
    widths.put(0, 42.0);
    widths.put(columns - 1, 11.0);
    return widths;
  }

  public List<NamedCell> names() {
    return List.of(OurMarks.sheet("totals", name));
  }
}
