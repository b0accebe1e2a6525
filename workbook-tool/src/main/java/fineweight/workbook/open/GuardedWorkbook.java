package fineweight.workbook.open;

import fineweight.workbook.Cell;
import fineweight.workbook.CellChange;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.FileFormat;
import fineweight.workbook.NamedCell;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntPredicate;

/** A workbook behind the boundary. */
final class GuardedWorkbook implements Workbook {
  private final Workbook workbook;
  private final Boundary boundary;
  private final List<SheetSummary> sheets;

  GuardedWorkbook(Workbook workbook, Boundary boundary) {
    this.workbook = workbook;
    this.boundary = boundary;
    this.sheets = List.copyOf(workbook.sheets());
  }

  @Override
  public Path path() {
    return workbook.path();
  }

  @Override
  public FileFormat format() {
    return workbook.format();
  }

  @Override
  public List<SheetSummary> sheets() {
    return sheets;
  }

  @Override
  public List<NamedCell> names() throws WorkbookRefusal {
    return boundary.guard(workbook::names);
  }

  @Override
  public void read(String sheet, IntPredicate columns, int lastRow, Consumer<List<Cell>> rows)
      throws WorkbookRefusal {
    requireSheet(sheet);
    boundary.guard(
        () -> {
          workbook.read(sheet, Boundary.marked(columns), lastRow, Boundary.marked(rows));
          return true;
        });
  }

  @Override
  public UsedArea usedArea(String sheet) throws WorkbookRefusal {
    requireSheet(sheet);
    return boundary.guard(() -> workbook.usedArea(sheet));
  }

  @Override
  public SheetLayout layout(String sheet) throws WorkbookRefusal {
    requireSheet(sheet);
    return boundary.guard(() -> workbook.layout(sheet));
  }

  @Override
  public Optional<String> onlyReadBecause() {
    return workbook.onlyReadBecause();
  }

  @Override
  public void preview(WorkbookEdit edit, Consumer<CellChange> changes) throws WorkbookRefusal {
    WorkbookEdit marked = marked(edit);
    boundary.guard(
        () -> {
          workbook.preview(marked, Boundary.marked(changes));
          return true;
        });
  }

  @Override
  public SaveResult save(WorkbookEdit edit) throws WorkbookRefusal {
    WorkbookEdit marked = marked(edit);
    return boundary.guard(() -> workbook.save(marked));
  }

  @Override
  public void close() throws IOException {
    workbook.close();
  }

  private WorkbookEdit marked(WorkbookEdit edit) {
    edit.removals().columns().forEach(place -> requireSheet(place.sheet()));
    edit.rows().forEach(rows -> requireSheet(rows.sheet()));
    return new WorkbookEdit(
        edit.sheets().stream().map(this::marked).toList(),
        edit.drafts(),
        edit.names(),
        edit.removals(),
        edit.rows(),
        edit.recalculation());
  }

  private SheetEdit marked(SheetEdit edit) {
    requireSheet(edit.sheet());
    return new SheetEdit(
        edit.sheet(),
        edit.headerRow(),
        edit.firstRow(),
        edit.lastRow(),
        edit.columns().stream()
            .map(
                column ->
                    new ColumnEdit(
                        column.column(),
                        column.header(),
                        column.look(),
                        column.width(),
                        Boundary.marked(column.cells())))
            .toList());
  }

  /** The caller's mistake, and not the file's fault. */
  private void requireSheet(String name) {
    if (sheets.stream().noneMatch(sheet -> sheet.name().equals(name))) {
      throw new IllegalArgumentException("sheet: the workbook has none named " + name);
    }
  }
}
