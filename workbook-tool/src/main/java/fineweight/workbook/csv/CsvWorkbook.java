package fineweight.workbook.csv;

import fineweight.workbook.Cell;
import fineweight.workbook.CellChange;
import fineweight.workbook.CellPlace;
import fineweight.workbook.CellValue;
import fineweight.workbook.FileFormat;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.SheetSummary.Visibility;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.save.FileFingerprint;
import fineweight.workbook.save.FileReplacement;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.IntPredicate;

/**
 * A text table. It has one sheet, named after nothing, and every field that is not empty is text: a
 * reader that knows the columns tells numbers from words. A row is a record of the file, blank
 * lines counted too.
 *
 * <p>A text table holds neither defined names nor sheets of ours: those of an edit are left out in
 * silence, and the caller, who sees the format, knows our columns by their headers. A formula is
 * written as its stored result. What of our texts could be taken for a formula gets an apostrophe
 * before it; what the owner wrote is not touched.
 *
 * <p>Encoding, byte order mark, delimiter, quotation marks, line breaks and a missing last one stay
 * as they are. A line shorter than the table is filled with empty fields up to our first content;
 * when our columns are taken out again those empty fields stay.
 */
public final class CsvWorkbook implements Workbook {
  private static final long LARGEST = 200L << 20;

  private final Path path;
  private final FileFingerprint asRead;
  private final Dialect dialect;
  private final UsedArea used;
  private int lineCount;
  private final FileReplacement replacement;

  private CsvWorkbook(
      Path path, FileFingerprint asRead, Dialect dialect, FileReplacement replacement)
      throws IOException, WorkbookRefusal {
    this.path = path;
    this.asRead = asRead;
    this.dialect = dialect;
    this.replacement = replacement;
    this.used = findUsedArea();
  }

  /**
   * Reads the whole file once.
   *
   * @throws WorkbookRefusal if it is not a text table, larger than 200 MB, or cannot be read
   */
  public static CsvWorkbook open(Path file, FileReplacement replacement) throws WorkbookRefusal {
    try {
      long size = Files.size(file);
      if (size == 0 || size > LARGEST) {
        throw new WorkbookRefusal(
            Kind.DAMAGED,
            size == 0
                ? "%s is empty: look for the file that has your table."
                    .formatted(file.getFileName())
                : "%s is larger than 200 MB: split it into smaller tables."
                    .formatted(file.getFileName()));
      }
      return new CsvWorkbook(file, FileFingerprint.of(file), Dialect.of(file), replacement);
    } catch (IOException e) {
      throw unreadable(file, e);
    }
  }

  @Override
  public Path path() {
    return path;
  }

  @Override
  public FileFormat format() {
    return FileFormat.CSV;
  }

  @Override
  public List<SheetSummary> sheets() {
    return List.of(new SheetSummary("", Visibility.VISIBLE, false, true));
  }

  /** Always empty. */
  @Override
  public List<NamedCell> names() {
    return List.of();
  }

  @Override
  public void read(String sheet, IntPredicate columns, int lastRow, Consumer<List<Cell>> rows)
      throws WorkbookRefusal {
    requireTheTable(sheet);
    forEachLine(
        line -> {
          List<Cell> cells = line.row() <= lastRow ? cells(line, columns) : List.of();
          if (!cells.isEmpty()) {
            rows.accept(cells);
          }
          return line.row() < lastRow;
        });
  }

  private static List<Cell> cells(Line line, IntPredicate columns) {
    List<Cell> cells = new ArrayList<>();
    for (int column = 0; column < line.fields().size(); column++) {
      String text = line.text(column);
      if (!text.isEmpty() && columns.test(column)) {
        CellPlace place = new CellPlace("", line.row(), column);
        cells.add(new Cell(place, new CellValue.Text(text), Optional.empty()));
      }
    }
    return cells;
  }

  @Override
  public UsedArea usedArea(String sheet) {
    requireTheTable(sheet);
    return used;
  }

  @Override
  public SheetLayout layout(String sheet) {
    requireTheTable(sheet);
    return new SheetLayout(List.of(), List.of());
  }

  @Override
  public void preview(WorkbookEdit edit, Consumer<CellChange> changes) throws WorkbookRefusal {
    CsvEdit plan = plan(edit);
    forEachLine(
        plan.newLastRow(),
        line -> {
          plan.requireFree(line);
          plan.apply(line, changes);
          return true;
        });
  }

  @Override
  public SaveResult save(WorkbookEdit edit) throws WorkbookRefusal {
    AtomicLong changed = new AtomicLong();
    preview(edit, change -> changed.incrementAndGet());
    if (changed.get() == 0) {
      return new SaveResult(false, 0, null);
    }
    CsvEdit plan = plan(edit);
    Path backup =
        replacement.replace(
            path, asRead, out -> write(plan, out), written -> requireAsMeant(plan, written));
    return new SaveResult(true, changed.get(), backup);
  }

  @Override
  public void close() {
    // Nothing is held open between two calls.
  }

  private CsvEdit plan(WorkbookEdit edit) throws WorkbookRefusal {
    CsvEdit plan = new CsvEdit(edit, used, new FieldStyle(dialect));
    if (plan.lastRow() >= lineCount) {
      throw new WorkbookRefusal(
          Kind.NO_ROOM,
          "%s ends with row %d, so that nothing can be put into row %d: run again."
              .formatted(path.getFileName(), lineCount, plan.lastRow() + 1));
    }
    return plan;
  }

  private void write(CsvEdit plan, OutputStream out) throws IOException, WorkbookRefusal {
    Writer writer = dialect.encoding().writer(out);
    try (LongerLines lines = longer(plan.newLastRow())) {
      for (Line line = lines.next(); line != null; line = lines.next()) {
        String before = "";
        for (Field field : plan.apply(line, change -> {})) {
          writer.write(before);
          writer.write(field.raw());
          before = String.valueOf(dialect.delimiter());
        }
        writer.write(line.end());
      }
    }
    writer.flush();
  }

  /** Reads the written copy beside the file: each field must be the one that was meant. */
  private void requireAsMeant(CsvEdit plan, Path written) throws IOException, WorkbookRefusal {
    try (LongerLines originals = longer(plan.newLastRow());
        LineReader copies = dialect.lines(written)) {
      Line original;
      do {
        original = originals.next();
        Line copy = copies.next();
        boolean asMeant =
            original == null || copy == null
                ? original == copy
                : original.end().equals(copy.end())
                    && plan.apply(original, change -> {}).equals(copy.fields());
        if (!asMeant) {
          throw new WorkbookRefusal(
              Kind.DAMAGED,
              "%s was left as it was, because row %d of its new copy was not as meant."
                  .formatted(path.getFileName(), original == null ? 0 : original.row() + 1));
        }
      } while (original != null);
    }
  }

  private UsedArea findUsedArea() throws WorkbookRefusal {
    int[] last = {-1, -1};
    forEachLine(
        line -> {
          lineCount = line.row() + 1;
          if (line.fields().stream().anyMatch(field -> !field.text().isEmpty())) {
            last[0] = line.row();
          }
          last[1] = Math.max(last[1], line.isBlank() ? -1 : line.fields().size() - 1);
          return true;
        });
    return new UsedArea(last[0], last[1]);
  }

  /** Takes a line and says whether it wants another. */
  private interface LineTaker {
    boolean take(Line line) throws WorkbookRefusal;
  }

  private LongerLines longer(int lastRow) throws IOException, WorkbookRefusal {
    return new LongerLines(dialect.lines(path), lastRow);
  }

  private void forEachLine(LineTaker taker) throws WorkbookRefusal {
    forEachLine(-1, taker);
  }

  private void forEachLine(int lastRow, LineTaker taker) throws WorkbookRefusal {
    try (LongerLines lines = longer(lastRow)) {
      Line line = lines.next();
      while (line != null && taker.take(line)) {
        line = lines.next();
      }
    } catch (IOException e) {
      throw unreadable(path, e);
    }
  }

  static void requireTheTable(String sheet) {
    if (!sheet.isEmpty()) {
      throw new IllegalArgumentException(
          "sheet: a text table has only the one named after nothing");
    }
  }

  private static WorkbookRefusal unreadable(Path file, IOException e) {
    return new WorkbookRefusal(
        Kind.FILE,
        "%s cannot be read: check that it is there and that you may read it."
            .formatted(file.getFileName()),
        e);
  }
}
