package fineweight.workbook.xlsx.draft;

import fineweight.workbook.xlsx.xml.XmlCursor;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The children of a worksheet in the order of the schema (ECMA-376 part 1, 18.3.1.99, from memory),
 * some of which are replaced.
 */
final class SheetPieces {
  static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final List<String> ORDER =
      List.of(
          "sheetPr",
          "dimension",
          "sheetViews",
          "sheetFormatPr",
          "cols",
          "sheetData",
          "sheetCalcPr",
          "sheetProtection",
          "protectedRanges",
          "scenarios",
          "autoFilter",
          "sortState",
          "dataConsolidate",
          "customSheetViews",
          "mergeCells",
          "phoneticPr",
          "conditionalFormatting",
          "dataValidations",
          "hyperlinks",
          "printOptions",
          "pageMargins",
          "pageSetup",
          "headerFooter",
          "rowBreaks",
          "colBreaks",
          "customProperties",
          "cellWatches",
          "ignoredErrors",
          "smartTags",
          "drawing",
          "legacyDrawing",
          "legacyDrawingHF",
          "drawingHF",
          "picture",
          "oleObjects",
          "controls",
          "webPublishItems",
          "tableParts",
          "extLst");

  private record Piece(int rank, String name, String xml) {}

  private final String before;
  private final String after;
  private final boolean prefixed;
  private final List<Piece> pieces = new ArrayList<>();
  private String drawing;

  private SheetPieces(String before, String after, boolean prefixed) {
    this.before = before;
    this.after = after;
    this.prefixed = prefixed;
  }

  static SheetPieces fresh() {
    return new SheetPieces(
        "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n<worksheet xmlns=\""
            + MAIN
            + "\">",
        "</worksheet>",
        false);
  }

  /**
   * @param utf8 a whole worksheet part
   */
  static SheetPieces of(byte[] utf8) {
    try (XmlCursor cursor = new XmlCursor(new ByteArrayInputStream(utf8), "worksheet")) {
      cursor.nextChild();
      if (cursor.isEmptyElement()) {
        return fresh();
      }
      String prefix = cursor.prefix();
      String tag = prefix.isEmpty() ? cursor.name() : prefix + ":" + cursor.name();
      SheetPieces pieces =
          new SheetPieces(text(utf8, 0, cursor.end()), "</" + tag + ">", !prefix.isEmpty());
      pieces.children(cursor, utf8);
      return pieces;
    }
  }

  private static String text(byte[] utf8, long from, long to) {
    return new String(utf8, (int) from, (int) (to - from), StandardCharsets.UTF_8);
  }

  private void children(XmlCursor cursor, byte[] utf8) {
    int rank = 0;
    while (cursor.nextChild()) {
      String name = cursor.name();
      long start = cursor.start();
      long end = cursor.end();
      boolean empty = cursor.isEmptyElement();
      if (name.equals("drawing")) {
        drawing = cursor.attributes().getAttributeValue(RELATIONS, "id");
      }
      cursor.skip();
      int known = ORDER.indexOf(name);
      rank = known < 0 ? rank : known;
      pieces.add(new Piece(rank, name, text(utf8, start, empty ? end : cursor.end())));
    }
  }

  /** The relation to the sheet's drawing; null if it has none. */
  String drawing() {
    return drawing;
  }

  /** Puts a piece in the place of all of that name. An empty text only takes them out. */
  void put(String name, String xml) {
    pieces.removeIf(p -> p.name.equals(name));
    if (xml.isEmpty()) {
      return;
    }
    int rank = ORDER.indexOf(name);
    int place = 0;
    while (place < pieces.size() && pieces.get(place).rank <= rank) {
      place++;
    }
    // Ours are written without prefix, so under a prefixed root each says its namespace.
    String own =
        prefixed ? xml.replaceFirst("^<" + name, "<" + name + " xmlns=\"" + MAIN + "\"") : xml;
    pieces.add(place, new Piece(rank, name, own));
  }

  byte[] whole() {
    StringBuilder whole = new StringBuilder(before);
    pieces.forEach(p -> whole.append(p.xml));
    return whole.append(after).toString().getBytes(StandardCharsets.UTF_8);
  }
}
