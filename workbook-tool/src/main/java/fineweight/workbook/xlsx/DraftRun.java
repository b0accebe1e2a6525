package fineweight.workbook.xlsx;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetSummary.Visibility;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.chart.DraftedCells;
import fineweight.workbook.xlsx.draft.DraftPart;
import fineweight.workbook.xlsx.draft.WholeSheet;
import fineweight.workbook.xlsx.sheet.CellReading;
import fineweight.workbook.xlsx.sheet.CellSet;
import fineweight.workbook.xlsx.style.DraftStyles;
import fineweight.workbook.xlsx.xml.PlainUtf8;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** One sheet of our own in one edit. */
final class DraftRun {
  private final SheetDraft draft;
  private final OpenedSheet old;
  private final byte[] bytes;
  private final CellSet changed = new CellSet();
  private final List<CellChange> changes = new ArrayList<>();
  private final ChartRun charts;
  private final boolean cellsDiffer;
  private final boolean chartsDiffer;

  DraftRun(OpenedPackage source, SheetDraft draft, CellReading reading, DraftedCells drafted)
      throws IOException, WorkbookRefusal {
    this.draft = draft;
    Optional<OpenedSheet> there = source.sheet(draft.name());
    old = there.orElse(null);
    if (old != null && !old.entry().isTable()) {
      throw new WorkbookRefusal(
          WorkbookRefusal.Kind.NO_ROOM,
          "The name \"%s\" is taken by a sheet that is no table; rename that sheet first."
              .formatted(draft.name()));
    }
    byte[] stored = old == null ? null : stored(source);
    DraftPart part = new DraftPart(draft, new DraftStyles(reading.styles()), stored);
    String sheetPart = old == null ? null : source.zip().spelling(old.entry().part());
    charts = new ChartRun(source, sheetPart, part.drawing(), draft.charts(), drafted);
    bytes = part.bytes(charts.newDrawing());
    cellsDiffer = compare(stored, reading);
    chartsDiffer = charts.differs();
  }

  private byte[] stored(OpenedPackage source) throws IOException {
    try (InputStream in = PlainUtf8.of(source.zip().xml(old.entry().part()))) {
      return in.readAllBytes();
    }
  }

  private boolean compare(byte[] stored, CellReading reading) throws IOException, WorkbookRefusal {
    if (Arrays.equals(stored, bytes)) {
      return false;
    }
    InputStream before = stored == null ? null : new ByteArrayInputStream(stored);
    TreeSet<String> extras =
        WholeSheet.compare(draft.name(), before, reading, wanted(), changed, changes::add);
    if (stored == null || !changes.isEmpty()) {
      return true;
    }
    InputStream after = new ByteArrayInputStream(bytes);
    return !extras.equals(
        WholeSheet.compare(draft.name(), after, reading, wanted(), new CellSet(), c -> {}));
  }

  private Map<Long, CellContent> wanted() {
    Map<Long, CellContent> wanted = new HashMap<>();
    for (int row = 0; row < draft.rows().size(); row++) {
      List<DraftCell> cells = draft.rows().get(row);
      for (int column = 0; cells != null && column < cells.size(); column++) {
        if (cells.get(column) != null) {
          wanted.put(WholeSheet.key(row, column), DraftPart.content(cells.get(column)));
        }
      }
    }
    return wanted;
  }

  SheetDraft draft() {
    return draft;
  }

  /** Null if the workbook has no such sheet yet. */
  OpenedSheet old() {
    return old;
  }

  byte[] bytes() {
    return bytes;
  }

  ChartRun charts() {
    return charts;
  }

  /** Whether the sheet must be written. */
  boolean differs() {
    return cellsDiffer || chartsDiffer;
  }

  boolean cellsDiffer() {
    return cellsDiffer;
  }

  /** Whether the owner would see the sheet otherwise than the draft wants. */
  boolean hidesOtherwise() {
    return old != null && draft.hidden() != (old.entry().visibility() != Visibility.VISIBLE);
  }

  CellSet changed() {
    return changed;
  }

  List<CellChange> changes() {
    return changes;
  }
}
