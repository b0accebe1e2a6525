package fineweight.workbook.xlsx.chart;

import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetChart;
import fineweight.workbook.SheetChart.Kind;
import fineweight.workbook.SheetChart.Range;
import fineweight.workbook.SheetChart.Series;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.xlsx.sheet.CellWriter;
import fineweight.workbook.xlsx.xml.XmlText;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * A chart as a part: DrawingML charts of ECMA-376 part 1, 21.2, its elements in the order of the
 * schema. Written from texts of our own and not by the office library, whose loading alone takes
 * longer than a whole run, and so that the same chart always gives the same bytes.
 */
public final class ChartXml {
  /** With more points than this the marks of a line run into each other. */
  private static final int MOST_MARKS = 20;

  private static final int MARK_SIZE = 6;
  private static final int ACROSS = 111_111_111;
  private static final int UP = 222_222_222;

  private static final String HEAD =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n"
          + "<c:chartSpace xmlns:c=\"http://schemas.openxmlformats.org/drawingml/2006/chart\""
          + " xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\""
          + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">"
          + "<c:date1904 val=\"0\"/><c:roundedCorners val=\"0\"/><c:chart>";
  private static final String TAIL =
      "<c:plotVisOnly val=\"0\"/><c:dispBlanksAs val=\"gap\"/></c:chart><c:spPr><a:solidFill>"
          + "<a:srgbClr val=\"FFFFFF\"/></a:solidFill><a:ln w=\"9525\"><a:solidFill>"
          + "<a:srgbClr val=\"767676\"/></a:solidFill></a:ln></c:spPr><c:txPr><a:bodyPr/><a:p>"
          + "<a:pPr><a:defRPr sz=\"900\"><a:solidFill><a:srgbClr val=\"1F1F1F\"/></a:solidFill>"
          + "</a:defRPr></a:pPr><a:endParaRPr lang=\"en-US\"/></a:p></c:txPr></c:chartSpace>";

  /** Lines differ by dash and mark, so that they can be told apart without their colours. */
  private record Look(String colour, String dash, String mark) {}

  private static final List<Look> LOOKS =
      List.of(
          new Look("1F4E9E", "solid", "circle"),
          new Look("9C3D00", "dash", "square"),
          new Look("1B6B3A", "sysDot", "triangle"));

  private final SheetChart chart;
  private final DraftedCells cells;

  private ChartXml(SheetChart chart, DraftedCells cells) {
    this.chart = chart;
    this.cells = cells;
  }

  /** The whole part. */
  public static byte[] of(SheetChart chart, DraftedCells cells) {
    return new ChartXml(chart, cells).whole().getBytes(StandardCharsets.UTF_8);
  }

  private String whole() {
    boolean lines = chart.kind() == Kind.LINE;
    StringBuilder series = new StringBuilder();
    for (int i = 0; i < chart.series().size(); i++) {
      series.append(series(i, chart.series().get(i)));
    }
    String ids = "<c:axId val=\"%d\"/><c:axId val=\"%d\"/>".formatted(ACROSS, UP);
    String plot =
        lines
            ? "<c:lineChart><c:grouping val=\"standard\"/><c:varyColors val=\"0\"/>%s<c:marker val=\"1\"/>%s</c:lineChart>"
            : "<c:barChart><c:barDir val=\"col\"/><c:grouping val=\"clustered\"/><c:varyColors val=\"0\"/>%s<c:gapWidth val=\"80\"/>%s</c:barChart>";
    String legend =
        lines ? "<c:legend><c:legendPos val=\"b\"/><c:overlay val=\"0\"/></c:legend>" : "";
    return HEAD
        + title(chart.words().title(), 1200)
        + "<c:autoTitleDeleted val=\"0\"/><c:plotArea><c:layout/>"
        + plot.formatted(series, ids)
        + acrossAxis()
        + upAxis()
        + "</c:plotArea>"
        + legend
        + TAIL;
  }

  private static String title(String words, int size) {
    return ("<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz=\"%d\" b=\"1\"/></a:pPr>"
            + "<a:r><a:rPr lang=\"en-US\" sz=\"%d\" b=\"1\"/><a:t>%s</a:t></a:r></a:p></c:rich>"
            + "</c:tx><c:overlay val=\"0\"/></c:title>")
        .formatted(size, size, XmlText.content(words));
  }

  private String series(int index, Series series) {
    boolean line = chart.kind() == Kind.LINE;
    Look look = LOOKS.get(index % LOOKS.size());
    String name =
        "<c:tx><c:strRef><c:f>%s</c:f><c:strCache><c:ptCount val=\"1\"/><c:pt idx=\"0\"><c:v>%s</c:v></c:pt></c:strCache></c:strRef></c:tx>"
            .formatted(
                XmlText.content(reference(series.name())),
                XmlText.content(cells.text(series.name())));
    return "<c:ser><c:idx val=\"%d\"/><c:order val=\"%d\"/>".formatted(index, index)
        + name
        + (line ? stroke(look) : ground(look))
        + labels(series)
        + "<c:cat>"
        + categories()
        + "</c:cat><c:val>"
        + numbers(series.values(), chart.words().format())
        + "</c:val>"
        + (line ? "<c:smooth val=\"0\"/>" : "")
        + "</c:ser>";
  }

  private String stroke(Look look) {
    boolean marked = chart.categories().size() <= MOST_MARKS;
    String fill = "<a:solidFill><a:srgbClr val=\"%s\"/></a:solidFill>".formatted(look.colour);
    String mark =
        marked
            ? "<c:symbol val=\"%s\"/><c:size val=\"%d\"/><c:spPr>%s</c:spPr>"
                .formatted(look.mark, MARK_SIZE, fill)
            : "<c:symbol val=\"none\"/>";
    return "<c:spPr><a:ln w=\"25400\">%s<a:prstDash val=\"%s\"/></a:ln></c:spPr><c:marker>%s</c:marker>"
        .formatted(fill, look.dash, mark);
  }

  private static String ground(Look look) {
    return "<c:spPr><a:solidFill><a:srgbClr val=\"%s\"/></a:solidFill></c:spPr><c:invertIfNegative val=\"0\"/>"
        .formatted(look.colour);
  }

  /** A bar bears its value; of a line the last point does, above or below the other line. */
  private String labels(Series series) {
    String format =
        "<c:numFmt formatCode=\"%s\" sourceLinked=\"0\"/><c:spPr><a:noFill/></c:spPr>"
            .formatted(XmlText.attribute(chart.words().format()));
    String shown =
        "<c:showLegendKey val=\"0\"/><c:showVal val=\"%d\"/><c:showCatName val=\"0\"/><c:showSerName val=\"0\"/><c:showPercent val=\"0\"/><c:showBubbleSize val=\"0\"/>";
    if (chart.kind() == Kind.BAR) {
      return "<c:dLbls>"
          + format
          + "<c:dLblPos val=\"outEnd\"/>"
          + shown.formatted(1)
          + "</c:dLbls>";
    }
    int last = series.values().size() - 1;
    boolean highest =
        chart.series().stream().allMatch(other -> last(series).compareTo(last(other)) >= 0);
    String point =
        "<c:dLbl><c:idx val=\"%d\"/>%s<c:dLblPos val=\"%s\"/>%s</c:dLbl>"
            .formatted(last, format, highest ? "t" : "b", shown.formatted(1));
    return "<c:dLbls>" + point + shown.formatted(0) + "</c:dLbls>";
  }

  private BigDecimal last(Series series) {
    Range values = series.values();
    return cells.number(values.cell(values.size() - 1)).orElse(BigDecimal.ZERO);
  }

  private String categories() {
    Range range = chart.categories();
    boolean numeric = true;
    for (int i = 0; i < range.size(); i++) {
      numeric &= cells.number(range.cell(i)).isPresent();
    }
    if (numeric) {
      return numbers(range, "General");
    }
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < range.size(); i++) {
      points.append(point(i, cells.text(range.cell(i))));
    }
    return "<c:strRef><c:f>%s</c:f><c:strCache><c:ptCount val=\"%d\"/>%s</c:strCache></c:strRef>"
        .formatted(XmlText.content(reference(range)), range.size(), points);
  }

  private String numbers(Range range, String format) {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < range.size(); i++) {
      Optional<BigDecimal> number = cells.number(range.cell(i));
      points.append(number.isPresent() ? point(i, CellWriter.plain(number.get())) : "");
    }
    return "<c:numRef><c:f>%s</c:f><c:numCache><c:formatCode>%s</c:formatCode><c:ptCount val=\"%d\"/>%s</c:numCache></c:numRef>"
        .formatted(
            XmlText.content(reference(range)), XmlText.content(format), range.size(), points);
  }

  private static String point(int index, String value) {
    return "<c:pt idx=\"%d\"><c:v>%s</c:v></c:pt>".formatted(index, XmlText.content(value));
  }

  private String acrossAxis() {
    return "<c:catAx><c:axId val=\"%d\"/>".formatted(ACROSS)
        + "<c:scaling><c:orientation val=\"minMax\"/></c:scaling><c:delete val=\"0\"/>"
        + "<c:axPos val=\"b\"/>"
        + (chart.words().across().isEmpty() ? "" : title(chart.words().across(), 900))
        + "<c:numFmt formatCode=\"General\" sourceLinked=\"0\"/><c:majorTickMark val=\"out\"/>"
        + "<c:minorTickMark val=\"none\"/><c:tickLblPos val=\"low\"/>"
        + "<c:crossAx val=\"%d\"/><c:crosses val=\"autoZero\"/><c:auto val=\"0\"/>".formatted(UP)
        + "<c:lblAlgn val=\"ctr\"/><c:lblOffset val=\"100\"/><c:noMultiLvlLbl val=\"1\"/></c:catAx>";
  }

  private String upAxis() {
    return "<c:valAx><c:axId val=\"%d\"/>".formatted(UP)
        + "<c:scaling><c:orientation val=\"minMax\"/>%s</c:scaling>"
            .formatted(chart.fromZero() ? "<c:min val=\"0\"/>" : "")
        + "<c:delete val=\"0\"/><c:axPos val=\"l\"/><c:majorGridlines><c:spPr><a:ln w=\"6350\">"
        + "<a:solidFill><a:srgbClr val=\"D0D0D0\"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>"
        + title(chart.words().up(), 900)
        + "<c:numFmt formatCode=\"#,##0.##\" sourceLinked=\"0\"/><c:majorTickMark val=\"out\"/>"
        + "<c:minorTickMark val=\"none\"/><c:tickLblPos val=\"nextTo\"/>"
        + "<c:crossAx val=\"%d\"/><c:crosses val=\"autoZero\"/>".formatted(ACROSS)
        + "<c:crossBetween val=\"between\"/></c:valAx>";
  }

  private static String reference(CellPlace place) {
    return quoted(place.sheet()) + corner(place.row(), place.column());
  }

  private static String reference(Range range) {
    Area area = range.area();
    return quoted(range.sheet())
        + corner(area.firstRow(), area.firstColumn())
        + ":"
        + corner(area.lastRow(), area.lastColumn());
  }

  private static String quoted(String sheet) {
    return "'" + sheet.replace("'", "''") + "'!";
  }

  private static String corner(int row, int column) {
    return "$" + CellPlace.letters(column) + "$" + (row + 1);
  }
}
