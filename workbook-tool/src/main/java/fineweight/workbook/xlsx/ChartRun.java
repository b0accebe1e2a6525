package fineweight.workbook.xlsx;

import fineweight.workbook.SheetChart;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.chart.ChartSense;
import fineweight.workbook.xlsx.chart.ChartXml;
import fineweight.workbook.xlsx.chart.DraftedCells;
import fineweight.workbook.xlsx.chart.DrawingXml;
import fineweight.workbook.xlsx.part.ContentTypes;
import fineweight.workbook.xlsx.part.Relationships;
import fineweight.workbook.xlsx.xml.ByteEdits;
import fineweight.workbook.xlsx.xml.Element;
import fineweight.workbook.xlsx.xml.Markup;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The charts of one sheet of ours in one edit. One that says the same as before is left as its
 * owner has it; one that says something else is written anew in its place; pictures and charts of
 * the owner's in the same drawing stay.
 */
final class ChartRun {
  private final OpenedPackage source;
  private final List<SheetChart> wanted;
  private final Map<String, byte[]> contents = new LinkedHashMap<>();
  private final Relationships sheetRelations;
  private final Markup drawing;
  private final Relationships relations;
  private final Map<String, Placed> placed = new LinkedHashMap<>();
  private final String newDrawing;

  /** A chart of ours that is there. */
  private record Placed(Element anchor, Relationships.Target target) {}

  /**
   * @param sheetPart null for a new sheet
   * @param drawingId the relation to the sheet's drawing; null if it has none
   */
  ChartRun(
      OpenedPackage source,
      String sheetPart,
      String drawingId,
      List<SheetChart> wanted,
      DraftedCells cells)
      throws IOException {
    this.source = source;
    this.wanted = wanted;
    for (SheetChart each : wanted) {
      contents.put(each.name(), ChartXml.of(each, cells));
    }
    boolean needed = !wanted.isEmpty() || drawingId != null;
    sheetRelations = needed && sheetPart != null ? source.relationshipsOf(sheetPart) : null;
    Optional<Relationships.Target> there =
        Optional.ofNullable(drawingId)
            .flatMap(id -> sheetRelations.byId(id))
            .filter(target -> source.zip().has(target.part()));
    drawing = there.isPresent() ? source.markup(there.get().part()) : null;
    relations = there.isPresent() ? source.relationshipsOf(there.get().part()) : null;
    if (drawing != null) {
      place();
    }
    boolean fresh = drawing == null && !wanted.isEmpty();
    newDrawing = !fresh ? null : sheetRelations == null ? "rId1" : sheetRelations.freeId();
  }

  private void place() {
    for (Element anchor : drawing.root().children()) {
      String name = DrawingXml.name(anchor);
      Optional<Relationships.Target> chart =
          DrawingXml.relation(anchor)
              .flatMap(relations::byId)
              .filter(target -> source.zip().has(target.part()));
      if (name.startsWith(SheetChart.PREFIX) && chart.isPresent()) {
        placed.putIfAbsent(name, new Placed(anchor, chart.get()));
      }
    }
  }

  /** The id under which the sheet must name a new drawing; null if it needs none. */
  String newDrawing() {
    return newDrawing;
  }

  boolean differs() throws IOException {
    return !contents.keySet().equals(placed.keySet()) || !rewritten().isEmpty();
  }

  /** Charts that are there and say something else. */
  private List<String> rewritten() throws IOException {
    List<String> rewritten = new ArrayList<>();
    for (Map.Entry<String, Placed> each : placed.entrySet()) {
      byte[] content = contents.get(each.getKey());
      if (content != null) {
        Markup before = source.markup(each.getValue().target().part());
        if (!ChartSense.same(before, Markup.of("chart", content))) {
          rewritten.add(each.getKey());
        }
      }
    }
    return rewritten;
  }

  /** The parts of the drawing that go with the charts that are no longer wanted. */
  void cut(Reach reach) {
    placed.forEach(
        (name, chart) -> {
          if (!contents.containsKey(name)) {
            reach.cut(drawing.part(), chart.target().part());
          }
        });
  }

  /**
   * @param sheetPart where the sheet stands, the new one included
   */
  void write(String sheetPart, Assembly assembly) throws IOException, WorkbookRefusal {
    for (String name : rewritten()) {
      assembly.put(placed.get(name).target().part(), contents.get(name));
    }
    List<SheetChart> added =
        wanted.stream().filter(chart -> !placed.containsKey(chart.name())).toList();
    if (newDrawing != null) {
      addDrawing(sheetPart, added, assembly);
    } else if (drawing != null) {
      changeDrawing(added, assembly);
    }
  }

  private void addDrawing(String sheetPart, List<SheetChart> added, Assembly assembly)
      throws IOException, WorkbookRefusal {
    String part = assembly.free("drawings/drawing", 1);
    Relationships own = Relationships.none(part);
    String anchors = anchors(added, 1, own, assembly);
    assembly.put(part, DrawingXml.with(anchors));
    assembly.putChanged(own);
    assembly.types().add(part, ContentTypes.DRAWING);
    Relationships sheet = sheetRelations == null ? Relationships.none(sheetPart) : sheetRelations;
    sheet.add(newDrawing, "drawing", part);
    assembly.putChanged(sheet);
  }

  private void changeDrawing(List<SheetChart> added, Assembly assembly)
      throws IOException, WorkbookRefusal {
    ByteEdits edits = new ByteEdits(drawing);
    placed.forEach(
        (name, chart) -> {
          if (!contents.containsKey(name)) {
            edits.remove(chart.anchor());
            relations.remove(chart.target());
          }
        });
    if (!added.isEmpty()) {
      int number = DrawingXml.largestNumber(drawing.root());
      edits.append(drawing.root(), anchors(added, number, relations, assembly));
    }
    if (!edits.isEmpty()) {
      assembly.put(drawing.part(), edits.apply());
    }
    assembly.putChanged(relations);
  }

  private String anchors(List<SheetChart> added, int largest, Relationships from, Assembly assembly)
      throws IOException, WorkbookRefusal {
    StringBuilder anchors = new StringBuilder();
    int number = largest;
    for (SheetChart chart : added) {
      String part = assembly.free("charts/chart", 1);
      assembly.put(part, contents.get(chart.name()));
      assembly.types().add(part, ContentTypes.CHART);
      anchors.append(DrawingXml.anchor(chart, ++number, from.add("chart", part)));
    }
    return anchors.toString();
  }
}
