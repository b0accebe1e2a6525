package fineweight.workbook.xls;

import fineweight.workbook.NamedCell;
import fineweight.workbook.RowsEdit;
import fineweight.workbook.SheetDraft;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import java.io.Closeable;
import java.io.IOException;
import java.util.Set;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.formula.udf.UDFFinder;

/** An edit made on a copy in memory. */
final class XlsEdit implements Closeable {
  private final XlsFile file;
  private final WorkbookEdit edit;
  private final HSSFWorkbook workbook;
  private final XlsChanges changes = new XlsChanges();

  private XlsEdit(XlsFile file, WorkbookEdit edit, HSSFWorkbook workbook) {
    this.file = file;
    this.edit = edit;
    this.workbook = workbook;
  }

  static XlsEdit make(WorkbookEdit edit, XlsFile file) throws IOException, WorkbookRefusal {
    XlsEdit made = new XlsEdit(file, edit, file.open());
    try {
      XlsSheets.refuseIfSealed(made.workbook, file);
      // A calculator for this kind of file speaks the library's own language.
      if (edit.recalculation().calculator() instanceof UDFFinder functions) {
        made.workbook.addToolPack(functions);
      }
      made.apply();
      return made;
    } catch (WorkbookRefusal | RuntimeException e) {
      made.close();
      throw e;
    }
  }

  private void apply() throws WorkbookRefusal {
    XlsStyles styles = new XlsStyles(workbook);
    XlsPut put = new XlsPut(workbook, changes);
    XlsNames names = new XlsNames(workbook, changes);
    XlsColumns columns = new XlsColumns(workbook, file, styles, put, changes);
    XlsDrafts drafts = new XlsDrafts(workbook, file, styles, put, changes);
    columns.remove(edit.removals().columns());
    edit.removals().names().forEach(names::remove);
    for (String sheet : edit.removals().sheets()) {
      drafts.remove(sheet);
    }
    // Names look into sheets, and formulas use names.
    for (SheetDraft draft : edit.drafts()) {
      drafts.place(draft);
    }
    for (NamedCell name : edit.names()) {
      names.put(name);
    }
    for (SheetDraft draft : edit.drafts()) {
      drafts.fill(draft);
    }
    for (SheetEdit sheet : edit.sheets()) {
      columns.apply(sheet);
    }
    XlsRows rows = new XlsRows(workbook, file, put, changes);
    for (RowsEdit each : edit.rows()) {
      rows.apply(each);
    }
    new XlsResults(workbook, changes, edit.recalculation()).refresh();
    names.hideAgain();
  }

  XlsChanges changes() {
    return changes;
  }

  XlsCopy copy() {
    return new XlsCopy(
        file,
        workbook.getBytes(),
        XlsSheets.names(workbook),
        XlsNames.all(workbook),
        changes,
        Set.copyOf(edit.removals().sheets()));
  }

  @Override
  public void close() throws IOException {
    workbook.close();
  }
}
