package fineweight.template;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The workbook that somebody starts with: an inventory with headings, drop-downs and hints, and a
 * short sheet that says how to use it. The first refresh adds the calculated columns and the sheets
 * of prices and lots.
 *
 * <p>The same choice always gives the same bytes: no clock, no user name.
 */
public final class StarterWorkbook {
  private final WorkbookKind kind;
  private final boolean withDemoRows;

  private StarterWorkbook(WorkbookKind kind, boolean withDemoRows) {
    this.kind = kind;
    this.withDemoRows = withDemoRows;
  }

  /** A collection with the rows of an invented scenario, marked so. */
  public static StarterWorkbook withDemoRows() {
    return withDemoRows(WorkbookKind.INVENTORY);
  }

  /** With the rows of an invented scenario, marked so. */
  public static StarterWorkbook withDemoRows(WorkbookKind kind) {
    return new StarterWorkbook(kind, true);
  }

  /** A collection; headings and hints only. */
  public static StarterWorkbook empty() {
    return empty(WorkbookKind.INVENTORY);
  }

  /** Headings and hints only. */
  public static StarterWorkbook empty(WorkbookKind kind) {
    return new StarterWorkbook(kind, false);
  }

  /**
   * Writes the workbook as .xlsx; the stream stays open.
   *
   * @throws IOException if the stream cannot take it
   */
  public void write(OutputStream out) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Looks looks = new Looks(workbook);
      List<List<String>> rows = withDemoRows ? DemoRows.read(kind.demo()) : List.of();
      new InventorySheet(workbook.createSheet(kind.sheet()), looks, kind).fill(rows);
      if (kind == WorkbookKind.TYPE_SET) {
        new SetSheet(workbook.createSheet("My set"), looks).fill(DemoRows.read("set-places.csv"));
      }
      new HowToSheet(workbook.createSheet("How to use"), looks, kind).fill(withDemoRows);
      workbook.setActiveSheet(0);
      FixedWorkbook.write(workbook, "Coin " + kind, out);
    }
  }
}
