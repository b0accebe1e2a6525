package fineweight.workbook.xls;

import fineweight.workbook.Cell;
import fineweight.workbook.CellChange;
import fineweight.workbook.CellPlace;
import fineweight.workbook.CellValue;
import fineweight.workbook.FileFormat;
import fineweight.workbook.NamedCell;
import fineweight.workbook.Passwords;
import fineweight.workbook.SheetLayout;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.save.FileReplacement;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Row;

/**
 * A workbook of Excel 97-2003. It is held in memory as a whole. A cell that we put in beside the
 * owner's takes the look of the cell on its left; one that is there keeps its look.
 */
public final class XlsWorkbook implements Workbook {
  private final XlsFile file;
  private final HSSFWorkbook workbook;
  private final boolean from1904;
  private final FileReplacement replacement;

  private XlsWorkbook(XlsFile file, HSSFWorkbook workbook, FileReplacement replacement) {
    this.file = file;
    this.workbook = workbook;
    this.from1904 = workbook.getInternalWorkbook().isUsing1904DateWindowing();
    this.replacement = replacement;
  }

  /**
   * @throws WorkbookRefusal if the file cannot be read, is encrypted, older than Excel 97, or has
   *     no sheet
   */
  public static XlsWorkbook open(Path path, FileReplacement replacement) throws WorkbookRefusal {
    return open(path, replacement, Passwords.NONE);
  }

  /**
   * The same, reading an encrypted one too.
   *
   * @throws WorkbookRefusal if the file cannot be read, is older than Excel 97, has no sheet, or
   *     nobody knows its password
   */
  public static XlsWorkbook open(Path path, FileReplacement replacement, Passwords passwords)
      throws WorkbookRefusal {
    try {
      XlsFile file = XlsFile.read(path, passwords);
      HSSFWorkbook workbook = file.open();
      if (workbook.getNumberOfSheets() == 0) {
        workbook.close();
        throw file.refusal(Kind.DAMAGED, "has no sheet in it: take a backup of it");
      }
      return new XlsWorkbook(file, workbook, replacement);
    } catch (IOException e) {
      throw unreadable(path, e);
    }
  }

  @Override
  public Path path() {
    return file.path();
  }

  @Override
  public FileFormat format() {
    return FileFormat.XLS;
  }

  @Override
  public List<SheetSummary> sheets() {
    return IntStream.range(0, workbook.getNumberOfSheets())
        .mapToObj(index -> XlsSheets.summary(workbook, index))
        .toList();
  }

  @Override
  public List<NamedCell> names() {
    return XlsNames.all(workbook);
  }

  @Override
  public void read(String sheet, IntPredicate columns, int lastRow, Consumer<List<Cell>> rows) {
    HSSFSheet found = XlsSheets.named(workbook, sheet);
    for (Row row : found) {
      if (row.getRowNum() > lastRow) {
        return;
      }
      List<Cell> cells = cells(row, columns);
      if (!cells.isEmpty()) {
        rows.accept(cells);
      }
    }
  }

  private List<Cell> cells(Row row, IntPredicate columns) {
    List<Cell> cells = new ArrayList<>();
    for (org.apache.poi.ss.usermodel.Cell each : row) {
      HSSFCell cell = (HSSFCell) each;
      if (columns.test(cell.getColumnIndex())) {
        CellValue value = XlsCells.value(cell, from1904);
        if (!(value instanceof CellValue.Blank) || XlsCells.isFormula(cell)) {
          CellPlace place =
              new CellPlace(
                  cell.getSheet().getSheetName(), cell.getRowIndex(), cell.getColumnIndex());
          cells.add(new Cell(place, value, XlsCells.formula(cell)));
        }
      }
    }
    return cells;
  }

  @Override
  public UsedArea usedArea(String sheet) {
    return XlsSheets.usedArea(XlsSheets.named(workbook, sheet));
  }

  @Override
  public SheetLayout layout(String sheet) {
    return XlsSheets.layout(XlsSheets.named(workbook, sheet));
  }

  @Override
  public Optional<String> onlyReadBecause() {
    return file.onlyReadBecause();
  }

  @Override
  public void preview(WorkbookEdit edit, Consumer<CellChange> changes) throws WorkbookRefusal {
    try (XlsEdit made = XlsEdit.make(edit, file)) {
      made.changes().cells().forEach(changes);
    } catch (IOException e) {
      throw unreadable(file.path(), e);
    }
  }

  @Override
  public SaveResult save(WorkbookEdit edit) throws WorkbookRefusal {
    if (onlyReadBecause().isPresent()) {
      throw new WorkbookRefusal(Kind.PROTECTED, onlyReadBecause().get());
    }
    XlsCopy copy = copy(edit);
    if (copy == null) {
      return new SaveResult(false, 0, null);
    }
    XlsProof proof = new XlsProof(copy, workbook);
    Path backup =
        replacement.replace(file.path(), file.fingerprint(), copy::writeTo, proof::require);
    return new SaveResult(true, copy.changes().cells().size(), backup);
  }

  /** Null if the edit changes nothing. */
  private XlsCopy copy(WorkbookEdit edit) throws WorkbookRefusal {
    try (XlsEdit made = XlsEdit.make(edit, file)) {
      return made.changes().isEmpty() ? null : made.copy();
    } catch (IOException e) {
      throw unreadable(file.path(), e);
    }
  }

  @Override
  public void close() throws IOException {
    workbook.close();
  }

  private static WorkbookRefusal unreadable(Path path, IOException e) {
    return new WorkbookRefusal(
        Kind.FILE,
        "%s cannot be read: check that it is there, whole, and that you may read it."
            .formatted(path.getFileName()),
        e);
  }
}
