package fineweight.workbook.xlsx.draft;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.sheet.CellWriter;
import fineweight.workbook.xlsx.style.DraftStyles;
import fineweight.workbook.xlsx.xml.XmlText;
import java.util.List;
import java.util.TreeMap;

/** Writes a sheet of our own as XML, its children in the order of the schema. */
public final class DraftPart {
  private final SheetDraft draft;
  private final DraftStyles styles;
  private final CellWriter writer;

  public DraftPart(SheetDraft draft, DraftStyles styles) {
    this.draft = draft;
    this.styles = styles;
    writer = new CellWriter(draft.name(), "");
  }

  /**
   * The sheet's part.
   *
   * @param old the part that it takes the place of; null if there is none. What its owner has put
   *     beside our cells stays.
   */
  public byte[] bytes(byte[] old) throws WorkbookRefusal {
    SheetPieces pieces = old == null ? SheetPieces.fresh() : SheetPieces.of(old);
    if (old == null) {
      pieces.put("sheetViews", view());
      pieces.put("sheetFormatPr", "<sheetFormatPr defaultRowHeight=\"15\"/>");
      pieces.put(
          "pageMargins",
          "<pageMargins left=\"0.7\" right=\"0.7\" top=\"0.75\" bottom=\"0.75\""
              + " header=\"0.3\" footer=\"0.3\"/>");
    }
    pieces.put("dimension", "");
    pieces.put("cols", columns());
    pieces.put("sheetData", rows());
    pieces.put("dataValidations", dropDowns());
    pieces.put("hyperlinks", links());
    return pieces.whole();
  }

  private String view() {
    if (draft.frozenRows() <= 0) {
      return "<sheetViews><sheetView workbookViewId=\"0\"/></sheetViews>";
    }
    return ("<sheetViews><sheetView workbookViewId=\"0\"><pane ySplit=\"%d\" topLeftCell=\"A%d\""
            + " activePane=\"bottomLeft\" state=\"frozen\"/><selection pane=\"bottomLeft\"/>"
            + "</sheetView></sheetViews>")
        .formatted(draft.frozenRows(), draft.frozenRows() + 1);
  }

  private String columns() {
    if (draft.widths().isEmpty()) {
      return "";
    }
    StringBuilder xml = new StringBuilder("<cols>");
    new TreeMap<>(draft.widths())
        .forEach(
            (column, width) ->
                xml.append(
                    "<col min=\"%d\" max=\"%d\" width=\"%s\" customWidth=\"1\"/>"
                        .formatted(column + 1, column + 1, width)));
    return xml.append("</cols>").toString();
  }

  private String rows() throws WorkbookRefusal {
    StringBuilder xml = new StringBuilder("<sheetData>");
    for (int row = 0; row < draft.rows().size(); row++) {
      List<DraftCell> cells = draft.rows().get(row);
      if (cells == null || cells.stream().allMatch(c -> c == null)) {
        continue;
      }
      xml.append("<row r=\"").append(row + 1).append("\">");
      for (int column = 0; column < cells.size(); column++) {
        DraftCell cell = cells.get(column);
        if (cell != null) {
          int style = styles.of(cell.kind(), cell.look(), !cell.link().isEmpty());
          xml.append(writer.cell(row, column, style, content(cell)));
        }
      }
      xml.append("</row>");
    }
    return xml.append("</sheetData>").toString();
  }

  /** An empty text is no content. */
  public static CellContent content(DraftCell cell) {
    boolean empty = cell.content() instanceof CellContent.Text text && text.value().isEmpty();
    return empty ? CellContent.EMPTY : cell.content();
  }

  private String dropDowns() {
    if (draft.dropDowns().isEmpty()) {
      return "";
    }
    StringBuilder xml = new StringBuilder();
    new TreeMap<>(draft.dropDowns())
        .forEach(
            (cells, list) ->
                xml.append(
                    ("<dataValidation type=\"list\" allowBlank=\"1\" showErrorMessage=\"1\""
                            + " sqref=\"%s\"><formula1>%s</formula1></dataValidation>")
                        .formatted(XmlText.attribute(cells), XmlText.content(list))));
    return "<dataValidations count=\"%d\">%s</dataValidations>"
        .formatted(draft.dropDowns().size(), xml);
  }

  private String links() {
    StringBuilder xml = new StringBuilder();
    for (int row = 0; row < draft.rows().size(); row++) {
      List<DraftCell> cells = draft.rows().get(row);
      for (int column = 0; cells != null && column < cells.size(); column++) {
        DraftCell cell = cells.get(column);
        if (cell != null && !cell.link().isEmpty()) {
          xml.append(
              "<hyperlink ref=\"%s%d\" location=\"%s\"/>"
                  .formatted(CellPlace.letters(column), row + 1, XmlText.attribute(cell.link())));
        }
      }
    }
    return xml.isEmpty() ? "" : "<hyperlinks>" + xml + "</hyperlinks>";
  }
}
