package fineweight.giveaway;

import fineweight.workbook.xlsx.part.Relationships;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.openxmlformats.schemas.drawingml.x2006.chart.ChartSpaceDocument;

/** The charts on a sheet, each at its place; pictures and shapes are left behind. */
final class EmptyDrawing {
  private static final String PLACES =
      "declare namespace x='http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing'; ";
  private static final String CHARTS =
      "declare namespace c='http://schemas.openxmlformats.org/drawingml/2006/chart'; ";
  private static final String ROOT =
      "<xdr:wsDr xmlns:xdr=\"http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing\""
          + " xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\">";

  private final SourcePackage source;
  private final NewPackage target;
  private final EmptyChart rule;
  private final Findings findings;
  private int drawings;
  private int charts;

  EmptyDrawing(SourcePackage source, NewPackage target, EmptyChart rule, Findings findings) {
    this.source = source;
    this.target = target;
    this.rule = rule;
    this.findings = findings;
  }

  /**
   * @return the part of the drawing; empty if the sheet has no chart that can be taken along
   */
  Optional<String> copy(String sheetPart, String sheet) throws IOException {
    Optional<String> part =
        source.relationships(sheetPart).byKind("drawing").map(Relationships.Target::part);
    if (part.isEmpty() || !source.has(part.get())) {
      return Optional.empty();
    }
    XmlObject drawing = parse(part.get(), null);
    Relationships links = source.relationships(part.get());
    String name = "xl/drawings/drawing" + (drawings + 1) + ".xml";
    List<String> anchors = new ArrayList<>();
    for (String kind : List.of("twoCellAnchor", "oneCellAnchor", "absoluteAnchor")) {
      for (XmlObject anchor : drawing.selectPath(PLACES + ".//x:" + kind)) {
        anchor(anchor, kind, links, name)
            .ifPresentOrElse(
                anchors::add, () -> findings.removed("picture or shape on \"" + sheet + "\""));
      }
    }
    if (anchors.isEmpty()) {
      return Optional.empty();
    }
    drawings++;
    target.add(name, "drawing", ROOT + String.join("", anchors) + "</xdr:wsDr>");
    return Optional.of(name);
  }

  private XmlObject parse(String part, org.apache.xmlbeans.SchemaType type) throws IOException {
    try (InputStream in = source.xml(part)) {
      return XmlObject.Factory.parse(
          in, type == null ? SheetFrame.reading() : SheetFrame.reading().setDocumentType(type));
    } catch (XmlException damaged) {
      throw new IOException("a drawing cannot be read", damaged);
    }
  }

  private Optional<String> anchor(
      XmlObject anchor, String kind, Relationships links, String drawingPart) throws IOException {
    XmlObject[] found = anchor.selectPath(CHARTS + ".//c:chart");
    if (found.length != 1) {
      return Optional.empty();
    }
    String id = Placing.attribute(found[0], NewPackage.RELATIONSHIPS, "id");
    Optional<String> part =
        links
            .byId(id)
            .filter(each -> each.kind().equals("chart"))
            .map(Relationships.Target::part)
            .filter(source::has);
    if (part.isEmpty()) {
      return Optional.empty();
    }
    ChartSpaceDocument chart = (ChartSpaceDocument) parse(part.get(), ChartSpaceDocument.type);
    rule.sieve(chart);
    charts++;
    String name = "xl/charts/chart" + charts + ".xml";
    target.add(name, "drawingml.chart", Placing.bytes(chart));
    return Optional.of(
        "<xdr:%s>%s%s<xdr:clientData/></xdr:%s>"
            .formatted(
                kind,
                Placing.position(anchor, kind),
                frame(charts, target.relate(drawingPart, "chart", name)),
                kind));
  }

  private static String frame(int number, String id) {
    return "<xdr:graphicFrame><xdr:nvGraphicFramePr><xdr:cNvPr id=\"%d\" name=\"Chart %d\"/>"
            .formatted(number + 1, number)
        + "<xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x=\"0\" y=\"0\"/>"
        + "<a:ext cx=\"0\" cy=\"0\"/></xdr:xfrm><a:graphic>"
        + "<a:graphicData uri=\"http://schemas.openxmlformats.org/drawingml/2006/chart\">"
        + "<c:chart xmlns:c=\"http://schemas.openxmlformats.org/drawingml/2006/chart\""
        + " xmlns:r=\"%s\" r:id=\"%s\"/>".formatted(NewPackage.RELATIONSHIPS, id)
        + "</a:graphicData></a:graphic></xdr:graphicFrame>";
  }
}
