package fineweight.workbook.xlsx;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellContent;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetDraft.DraftCell;
import fineweight.workbook.SheetSummary.Visibility;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.xlsx.draft.DraftPart;
import fineweight.workbook.xlsx.sheet.CellReading;
import fineweight.workbook.xlsx.sheet.CellSet;
import fineweight.workbook.xlsx.sheet.WholeSheet;
import fineweight.workbook.xlsx.style.DraftStyles;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
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
  private final boolean differs;

  DraftRun(OpenedPackage source, SheetDraft draft, CellReading reading)
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
    DraftStyles styles = new DraftStyles(reading.styles());
    bytes = new DraftPart(draft, styles).xml().getBytes(StandardCharsets.UTF_8);
    differs = compare(source, reading);
  }

  private boolean compare(OpenedPackage source, CellReading reading)
      throws IOException, WorkbookRefusal {
    Map<Long, CellContent> wanted = wanted();
    if (old == null) {
      WholeSheet.compare(draft.name(), null, reading, wanted, changed, changes::add);
      return true;
    }
    byte[] stored;
    try (InputStream in = source.zip().xml(old.entry().part())) {
      stored = in.readAllBytes();
    }
    if (Arrays.equals(stored, bytes)) {
      return false;
    }
    TreeSet<String> before =
        WholeSheet.compare(draft.name(), bytes(stored), reading, wanted, changed, changes::add);
    TreeSet<String> after =
        WholeSheet.compare(draft.name(), bytes(bytes), reading, wanted, new CellSet(), c -> {});
    return !changes.isEmpty() || !before.equals(after);
  }

  private static InputStream bytes(byte[] content) {
    return new ByteArrayInputStream(content);
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

  /** Whether the part must be written. */
  boolean differs() {
    return differs;
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
