package fineweight.workbook.xlsx.chart;

import fineweight.workbook.SheetChart;
import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.XmlText;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The part that says where charts and pictures of a sheet stand (ECMA-376 part 1, 20.5). */
public final class DrawingXml {
  private static final String DRAWING =
      "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
  private static final String MAIN = "http://schemas.openxmlformats.org/drawingml/2006/main";
  private static final String CHART = "http://schemas.openxmlformats.org/drawingml/2006/chart";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private DrawingXml() {}

  /** A new drawing with these anchors. */
  public static byte[] with(String anchors) {
    String xml =
        "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n<xdr:wsDr xmlns:xdr=\"%s\""
                .formatted(DRAWING)
            + " xmlns:a=\"%s\">%s</xdr:wsDr>".formatted(MAIN, anchors);
    return xml.getBytes(StandardCharsets.UTF_8);
  }

  /**
   * One chart in its place. It declares its own prefixes, so that it fits into a drawing that
   * somebody else has written.
   *
   * @param number of the object in the drawing, used only once there
   * @param relation to the chart's part
   */
  public static String anchor(SheetChart chart, int number, String relation) {
    SheetChart.Place place = chart.place();
    return "<xdr:twoCellAnchor xmlns:xdr=\"%s\" xmlns:a=\"%s\" editAs=\"oneCell\">"
            .formatted(DRAWING, MAIN)
        + corner("from", place.column(), place.row())
        + corner("to", place.endColumn(), place.endRow())
        + "<xdr:graphicFrame macro=\"\"><xdr:nvGraphicFramePr>"
        + "<xdr:cNvPr id=\"%d\" name=\"%s\" descr=\"%s\"/>"
            .formatted(
                number,
                XmlText.attribute(chart.name()),
                XmlText.attribute(chart.words().description()))
        + "<xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x=\"0\" y=\"0\"/>"
        + "<a:ext cx=\"0\" cy=\"0\"/></xdr:xfrm><a:graphic><a:graphicData uri=\""
        + CHART
        + "\"><c:chart xmlns:c=\"%s\" xmlns:r=\"%s\" r:id=\"%s\"/>"
            .formatted(CHART, RELATIONS, relation)
        + "</a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>";
  }

  private static String corner(String which, int column, int row) {
    return ("<xdr:%s><xdr:col>%d</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>%d</xdr:row>"
            + "<xdr:rowOff>0</xdr:rowOff></xdr:%s>")
        .formatted(which, column, row, which);
  }

  /** The name of the object in an anchor; empty text if it has none. */
  public static String name(Element anchor) {
    return find(anchor, "cNvPr").map(found -> found.get("name")).orElse("");
  }

  /** The relation of the chart in an anchor; empty if it holds none. */
  public static Optional<String> relation(Element anchor) {
    return find(anchor, "chart").map(found -> found.get(RELATIONS, "id"));
  }

  /** The largest number of an object in a drawing. */
  public static int largestNumber(Element element) {
    int largest = element.name().equals("cNvPr") ? element.number("id", 0) : 0;
    for (Element child : element.children()) {
      largest = Math.max(largest, largestNumber(child));
    }
    return largest;
  }

  private static Optional<Element> find(Element element, String name) {
    if (element.name().equals(name)) {
      return Optional.of(element);
    }
    return element.children().stream().flatMap(each -> find(each, name).stream()).findFirst();
  }
}
