import java.io.FileInputStream;
import java.io.FileOutputStream;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Copies a workbook, with some of its columns hidden, for a picture. */
final class HideColumns {
  private HideColumns() {}

  public static void main(String[] args) throws Exception {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new FileInputStream(args[0]));
        FileOutputStream out = new FileOutputStream(args[1])) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      sheet.setPrintGridlines(false);
      workbook.removePrintArea(0);
      for (int i = 2; i < args.length; i++) {
        sheet.setColumnHidden(CellReference.convertColStringToIndex(args[i]), true);
      }
      workbook.write(out);
    }
  }
}
