package fineweight.workbook.xlsx.splice;

import fineweight.workbook.CellPlace;
import fineweight.workbook.SheetLayout.Area;
import fineweight.workbook.xlsx.part.CellRef;
import fineweight.workbook.xlsx.xml.StartTag;
import fineweight.workbook.xlsx.xml.XmlCursor;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The areas of drop-downs and conditional formats that ended with a list's last row and shall end
 * with its new one. An area of a single row is meant for that row and stays.
 *
 * @param oldEnd from 0; -1 if no list grows
 */
record LongerRanges(int oldEnd, int newEnd, int firstColumn, int lastColumn) {
  static final LongerRanges NONE = new LongerRanges(-1, -1, -1, -1);

  static LongerRanges of(List<ColumnTarget> targets) {
    LongerRanges longer = NONE;
    for (ColumnTarget target : targets) {
      if (target.model() != null) {
        boolean first = longer == NONE;
        longer =
            new LongerRanges(
                target.model().row(),
                target.lastRow(),
                first ? target.column() : Math.min(longer.firstColumn, target.column()),
                Math.max(longer.lastColumn, target.column()));
      }
    }
    return longer;
  }

  /** Lengthens what the tag at the cursor says of its cells. */
  void grow(XmlCursor at, Cutting cutting) throws IOException {
    String cells = at.attribute("sqref");
    if (oldEnd < 0 || cells == null) {
      return;
    }
    List<String> areas = List.of(cells.strip().split("\\s+"));
    String grown = areas.stream().map(this::grown).collect(Collectors.joining(" "));
    if (!grown.equals(String.join(" ", areas))) {
      String tag = cutting.text(at.start(), at.end());
      cutting.replace(at.start(), at.end(), StartTag.with(tag, "sqref", grown));
    }
  }

  private String grown(String cells) {
    Area area = CellRef.area(cells);
    boolean follows =
        area != null
            && area.lastRow() == oldEnd
            && area.firstRow() < oldEnd
            && area.firstColumn() >= firstColumn
            && area.lastColumn() <= lastColumn;
    return follows
        ? CellPlace.letters(area.firstColumn())
            + (area.firstRow() + 1)
            + ":"
            + CellPlace.letters(area.lastColumn())
            + (newEnd + 1)
        : cells;
  }
}
