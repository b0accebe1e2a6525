package fineweight.workbook.xlsx.draft;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellPlace;
import fineweight.workbook.PageSetup;
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
  private final SheetPieces pieces;
  private final boolean isNew;

  /**
   * @param old the part that it takes the place of; null if there is none. What its owner has put
   *     beside our cells stays.
   */
  public DraftPart(SheetDraft draft, DraftStyles styles, byte[] old) {
    this.draft = draft;
    this.styles = styles;
    writer = new CellWriter(draft.name(), "");
    pieces = old == null ? SheetPieces.fresh() : SheetPieces.of(old);
    isNew = old == null;
  }

  /** The relation to the drawing that the sheet has; null if it has none. */
  public String drawing() {
    return pieces.drawing();
  }

  /**
   * The sheet's part.
   *
   * @param newDrawing the relation to a drawing that it gets; null leaves things as they are
   */
  public byte[] bytes(String newDrawing) throws WorkbookRefusal {
    if (isNew) {
      pieces.put("sheetViews", view());
      pieces.put("sheetFormatPr", "<sheetFormatPr defaultRowHeight=\"15\"/>");
      pieces.put(
          "pageMargins",
          "<pageMargins left=\"0.7\" right=\"0.7\" top=\"0.75\" bottom=\"0.75\""
              + " header=\"0.3\" footer=\"0.3\"/>");
      draft.page().ifPresent(this::page);
    }
    if (newDrawing != null) {
      pieces.put(
          "drawing",
          "<drawing xmlns:r=\"%s\" r:id=\"%s\"/>".formatted(SheetPieces.RELATIONS, newDrawing));
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

  private void page(PageSetup page) {
    pieces.put("sheetPr", "<sheetPr><pageSetUpPr fitToPage=\"1\"/></sheetPr>");
    pieces.put(
        "pageSetup",
        "<pageSetup orientation=\"%s\" fitToWidth=\"1\" fitToHeight=\"0\"/>"
            .formatted(page.landscape() ? "landscape" : "portrait"));
    pieces.put(
        "headerFooter",
        "<headerFooter><oddFooter>&amp;L&amp;A&amp;R&amp;P / &amp;N</oddFooter></headerFooter>");
    StringBuilder breaks = new StringBuilder();
    for (int row : page.breaks()) {
      breaks.append("<brk id=\"%d\" max=\"16383\" man=\"1\"/>".formatted(row));
    }
    if (!breaks.isEmpty()) {
      int count = page.breaks().size();
      pieces.put(
          "rowBreaks",
          "<rowBreaks count=\"%d\" manualBreakCount=\"%d\">%s</rowBreaks>"
              .formatted(count, count, breaks));
    }
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
