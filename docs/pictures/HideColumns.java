import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Copies a workbook, with only the columns named, for a picture. */
final class HideColumns {
  private HideColumns() {}

  public static void main(String[] args) throws Exception {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new FileInputStream(args[0]));
        FileOutputStream out = new FileOutputStream(args[1])) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      sheet.setPrintGridlines(false);
      workbook.removePrintArea(0);
      List<String> kept = List.of(args).subList(2, args.length);
      for (Cell heading : sheet.getRow(0)) {
        String words = heading.getStringCellValue();
        sheet.setColumnHidden(
            heading.getColumnIndex(), kept.stream().noneMatch(each -> words.equals(each) || words.equals(each + " USD")));
      }
      workbook.write(out);
    }
  }
}
