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
  private final boolean withDemoRows;

  private StarterWorkbook(boolean withDemoRows) {
    this.withDemoRows = withDemoRows;
  }

  /** With the rows of an invented scenario, marked so. */
  public static StarterWorkbook withDemoRows() {
    return new StarterWorkbook(true);
  }

  /** Headings and hints only. */
  public static StarterWorkbook empty() {
    return new StarterWorkbook(false);
  }

  /**
   * Writes the workbook as .xlsx; the stream stays open.
   *
   * @throws IOException if the stream cannot take it
   */
  public void write(OutputStream out) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Looks looks = new Looks(workbook);
      List<List<String>> rows = withDemoRows ? DemoRows.read() : List.of();
      new InventorySheet(workbook.createSheet("Inventory"), looks).fill(rows);
      new HowToSheet(workbook.createSheet("How to use"), looks).fill(withDemoRows);
      workbook.setActiveSheet(0);
      FixedWorkbook.write(workbook, "Coin inventory", out);
    }
  }
}
