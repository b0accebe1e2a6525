package fineweight.template;

import java.util.List;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFDataValidationConstraint;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** The sheet with the places of a set, which a refresh holds the pieces against. */
final class SetSheet {
  private static final int LAST_ROW = 500;

  /** Heading, width in characters and what to type. */
  private enum Column {
    PLACE("Place", 30, "A name of your own for one hole of the set, such as War nickel."),
    COIN("Coin", 34, "The coin in your words, as in the inventory. Empty: the place says it."),
    YEARS("Years", 16, "The years that count, such as 1942-1945. Empty: every year of the coin."),
    MINTS(
        "Mints",
        14,
        "none, D, S makes a hole for each mint mark. Empty: the mint does not matter.");

    private final String heading;
    private final int width;
    private final String prompt;

    Column(String heading, int width, String prompt) {
      this.heading = heading;
      this.width = width;
      this.prompt = prompt;
    }
  }

  private final XSSFSheet sheet;
  private final Looks looks;

  SetSheet(XSSFSheet sheet, Looks looks) {
    this.sheet = sheet;
    this.looks = looks;
  }

  void fill(List<List<String>> places) {
    XSSFRow header = sheet.createRow(0);
    header.setHeightInPoints(24);
    for (Column column : Column.values()) {
      XSSFCell cell = header.createCell(column.ordinal());
      cell.setCellValue(column.heading);
      cell.setCellStyle(looks.ofHeader(InventoryColumn.NOTES));
      sheet.setColumnWidth(column.ordinal(), column.width * 256);
      entry(column);
    }
    for (int i = 0; i < places.size(); i++) {
      XSSFRow row = sheet.createRow(i + 1);
      for (int place = 0; place < places.get(i).size(); place++) {
        if (!places.get(i).get(place).isEmpty()) {
          row.createCell(place).setCellValue(places.get(i).get(place));
        }
      }
    }
    sheet.createFreezePane(1, 1);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setPaperSize(PaperSize.A4_PAPER);
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setFitHeight((short) 0);
    sheet.setPrintGridlines(true);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
  }

  private void entry(Column column) {
    DataValidationHelper make = sheet.getDataValidationHelper();
    DataValidationConstraint constraint =
        column == Column.PLACE
            ? make.createCustomConstraint("COUNTIF($A$2:$A$" + LAST_ROW + ",$A2)=1")
            : new XSSFDataValidationConstraint(ValidationType.ANY, "");
    DataValidation entry =
        make.createValidation(
            constraint,
            new CellRangeAddressList(1, LAST_ROW - 1, column.ordinal(), column.ordinal()));
    entry.createPromptBox(column.heading, column.prompt);
    entry.setShowPromptBox(true);
    entry.setEmptyCellAllowed(true);
    if (column == Column.PLACE) {
      entry.setErrorStyle(DataValidation.ErrorStyle.WARNING);
      entry.createErrorBox(
          "Please check",
          "This place stands in another row. Keep it only if the years of the two differ.");
      entry.setShowErrorBox(true);
    } else {
      entry.setShowErrorBox(false);
    }
    sheet.addValidationData(entry);
  }
}
