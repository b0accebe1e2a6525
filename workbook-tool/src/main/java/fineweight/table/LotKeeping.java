package fineweight.table;

import fineweight.column.Appraiser;
import fineweight.entry.LotRows;
import fineweight.entry.OpenedInventory;
import fineweight.entry.Purchase;
import fineweight.refresh.inventory.CellTexts;
import fineweight.refresh.inventory.RefreshRefusal;
import fineweight.table.TableJournal.Kind;
import fineweight.workbook.CellChange;
import fineweight.workbook.FileFormat;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.Workbooks;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * Puts the pieces of a table where they stay: under the owner's list, on a new sheet of his
 * workbook, or into a list beside it. The journal says beforehand where, so that a table that is
 * killed on the way finds out afterwards whether they are there.
 */
public final class LotKeeping {
  private static final int LONGEST_NAME = 24;

  private final Workbooks workbooks;
  private final Path file;
  private final Optional<String> sheet;
  private final Appraiser appraiser;
  private final LocalDate today;

  /**
   * @param sheet the sheet that holds the inventory, if it was named
   */
  public LotKeeping(
      Workbooks workbooks,
      Path file,
      Optional<String> sheet,
      Appraiser appraiser,
      LocalDate today) {
    this.workbooks = workbooks;
    this.file = file;
    this.sheet = sheet;
    this.appraiser = appraiser;
    this.today = today;
  }

  private LotRows rows(Workbook workbook, OpenedPieces pieces)
      throws WorkbookRefusal, RefreshRefusal {
    Optional<BigDecimal> cost =
        Optional.of(pieces.said(Kind.COST)).filter(text -> !text.isEmpty()).map(BigDecimal::new);
    String day = pieces.said(Kind.DAY);
    Purchase purchase =
        new Purchase(pieces.said(Kind.LOT), cost, day.isEmpty() ? today : LocalDate.parse(day));
    OpenedInventory list = OpenedInventory.read(workbook, sheet, appraiser);
    return new LotRows(list, purchase, pieces.all().values(), appraiser);
  }

  /** The cells that {@link #underList} would write. */
  void preview(OpenedPieces pieces, Consumer<CellChange> changes)
      throws WorkbookRefusal, RefreshRefusal, IOException {
    try (Workbook workbook = workbooks.open(file)) {
      workbook.preview(WorkbookEdit.of(rows(workbook, pieces).under()), changes);
    }
  }

  /**
   * Puts the pieces under the owner's list.
   *
   * @return what to tell him
   */
  List<String> underList(OpenedPieces pieces) throws WorkbookRefusal, RefreshRefusal, IOException {
    try (Workbook workbook = workbooks.open(file)) {
      LotRows rows = rows(workbook, pieces);
      RowsEdit edit = rows.under();
      workbook.preview(WorkbookEdit.of(edit), change -> {});
      pieces.keepIn(Kind.ROWS, (edit.lastRow() + 1) + " " + edit.sheet());
      Workbook.SaveResult saved = workbook.save(WorkbookEdit.of(edit));
      pieces.settled();
      String where = edit.sheet().isEmpty() ? "" : " of sheet \"" + edit.sheet() + "\"";
      String span =
          edit.rows().size() == 1
              ? "row " + (edit.lastRow() + 2)
              : "rows " + (edit.lastRow() + 2) + " to " + (edit.newLastRow() + 1);
      List<String> told = new ArrayList<>();
      told.add(counted(pieces) + " saved in " + span + where + " of " + file.getFileName() + ".");
      told.addAll(rows.remarks());
      told.add(
          "The file as it was is kept as "
              + saved.backup().getFileName()
              + ". fineweight refresh fills metal and worth.");
      return told;
    }
  }

  /** Puts the pieces on a new sheet under the headings of the list. */
  List<String> onNewSheet(OpenedPieces pieces) throws WorkbookRefusal, RefreshRefusal, IOException {
    try (Workbook workbook = workbooks.open(file)) {
      if (workbook.format() == FileFormat.CSV) {
        return besides(pieces);
      }
      LotRows rows = rows(workbook, pieces);
      String name = freeName(workbook, pieces.said(Kind.LOT));
      pieces.keepIn(Kind.SHEET, name);
      WorkbookEdit edit =
          new WorkbookEdit(
              List.of(), List.of(rows.onSheet(name)), List.of(), WorkbookEdit.Removal.NOTHING);
      Workbook.SaveResult saved = workbook.save(edit);
      pieces.settled();
      List<String> told = new ArrayList<>();
      told.add(
          counted(pieces)
              + " saved on the new sheet \""
              + name
              + "\" of "
              + file.getFileName()
              + ".");
      told.addAll(rows.remarks());
      told.add("The file as it was is kept as " + saved.backup().getFileName() + ".");
      return told;
    }
  }

  /** Puts the pieces into a list of their own beside the workbook. */
  List<String> besides(OpenedPieces pieces) throws IOException {
    if (pieces.said(Kind.LIST).isEmpty()) {
      pieces.keepIn(Kind.LIST, LotList.free(file).getFileName().toString());
    }
    Path list = file.toAbsolutePath().resolveSibling(pieces.said(Kind.LIST));
    LotList.write(list, pieces);
    pieces.settled();
    return List.of(
        counted(pieces)
            + " saved as a list of their own, "
            + list.getFileName()
            + ", beside "
            + file.getFileName()
            + ".");
  }

  private static String counted(OpenedPieces pieces) {
    int size = pieces.all().size();
    return size == 1 ? "1 piece is" : size + " pieces are";
  }

  private static String freeName(Workbook workbook, String lot) {
    String bare = lot.replaceAll("[:\\\\/?*\\[\\]']", " ").strip();
    String stem =
        bare.isEmpty()
            ? "Lot"
            : bare.length() > LONGEST_NAME ? bare.substring(0, LONGEST_NAME).strip() : bare;
    String name = stem;
    for (int i = 2; isTaken(workbook, name); i++) {
      name = stem + " " + i;
    }
    return name;
  }

  private static boolean isTaken(Workbook workbook, String name) {
    return workbook.sheets().stream().anyMatch(sheet -> sheet.name().equalsIgnoreCase(name));
  }

  /** Whether a table that was killed while saving had its pieces kept already. */
  public boolean isKept(OpenedPieces pieces) throws WorkbookRefusal, IOException {
    String list = pieces.said(Kind.LIST);
    if (!list.isEmpty()) {
      return Files.exists(file.toAbsolutePath().resolveSibling(list));
    }
    String name = pieces.said(Kind.SHEET);
    String[] rows = pieces.said(Kind.ROWS).split(" ", 2);
    if (name.isEmpty() && rows.length < 2 || pieces.all().isEmpty()) {
      return false;
    }
    try (Workbook workbook = workbooks.open(file)) {
      if (!name.isEmpty()) {
        return isTaken(workbook, name);
      }
      return holds(
          workbook, rows[1], Integer.parseInt(rows[0]), List.copyOf(pieces.all().values()));
    }
  }

  /** Whether the rows from a row on (from 0) hold the words, row by row. */
  private static boolean holds(Workbook workbook, String sheet, int first, List<String> words)
      throws WorkbookRefusal {
    if (workbook.sheets().stream().noneMatch(each -> each.name().equals(sheet))) {
      return false;
    }
    Map<Integer, List<String>> found = new TreeMap<>();
    workbook.read(
        sheet,
        column -> true,
        first + words.size() - 1,
        cells ->
            found.put(
                cells.get(0).place().row(),
                cells.stream().map(cell -> CellTexts.text(cell.value())).toList()));
    for (int i = 0; i < words.size(); i++) {
      List<String> row = found.getOrDefault(first + i, List.of());
      // A text table puts an apostrophe before what an office would take for a formula.
      if (!row.contains(words.get(i)) && !row.contains("'" + words.get(i))) {
        return false;
      }
    }
    return true;
  }
}
