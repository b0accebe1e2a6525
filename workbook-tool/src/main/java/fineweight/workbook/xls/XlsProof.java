package fineweight.workbook.xls;

import fineweight.workbook.CellChange;
import fineweight.workbook.CellPlace;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.DirectoryEntry;
import org.apache.poi.poifs.filesystem.DocumentEntry;
import org.apache.poi.poifs.filesystem.DocumentInputStream;
import org.apache.poi.poifs.filesystem.Entry;

/** Holds a written copy against the original: it may differ only where it was meant to. */
final class XlsProof {
  private final XlsCopy meant;
  private final HSSFWorkbook original;

  XlsProof(XlsCopy meant, HSSFWorkbook original) {
    this.meant = meant;
    this.original = original;
  }

  void require(Path written) throws IOException, WorkbookRefusal {
    try (InputStream in = Files.newInputStream(written);
        HSSFWorkbook copy = new HSSFWorkbook(in, true)) {
      requireSame(meant.sheets(), XlsSheets.names(copy), "the list of sheets");
      for (String name : XlsSheets.names(original)) {
        if (!meant.removedSheets().contains(name)) {
          requireOwnersCells(original.getSheet(name), copy.getSheet(name));
        }
      }
      requireMeantCells(copy);
      requireSame(meant.names(), XlsNames.all(copy), "a name");
      requireSame(original.getAllPictures().size(), copy.getAllPictures().size(), "a picture");
      requireSame(streams(original), streams(copy), "a stream");
    }
  }

  private void requireOwnersCells(HSSFSheet before, HSSFSheet copy) throws WorkbookRefusal {
    requireSame(before.getMergedRegions(), copy.getMergedRegions(), "a merged area");
    int lastRow = Math.max(before.getLastRowNum(), copy.getLastRowNum());
    for (int row = 0; row <= lastRow; row++) {
      for (int column = 0; column < Math.max(width(before, row), width(copy, row)); column++) {
        CellPlace place = new CellPlace(before.getSheetName(), row, column);
        HSSFCell was = XlsCells.cell(before, row, column);
        HSSFCell is = XlsCells.cell(copy, row, column);
        if (!meant.changes().has(place) && !look(was).equals(look(is))) {
          throw wrong("cell " + place);
        }
      }
    }
  }

  private void requireMeantCells(HSSFWorkbook copy) throws WorkbookRefusal {
    for (CellChange change : meant.changes().cells()) {
      CellPlace place = change.place();
      HSSFSheet sheet = copy.getSheet(place.sheet());
      HSSFCell cell = sheet == null ? null : XlsCells.cell(sheet, place.row(), place.column());
      if (!change.after().equals(XlsCells.shown(cell))
          && !change.after().equals(XlsCells.result(cell))) {
        throw wrong("cell " + place);
      }
    }
  }

  private static int width(HSSFSheet sheet, int row) {
    return sheet.getRow(row) == null ? 0 : sheet.getRow(row).getLastCellNum();
  }

  /** Formula, result and format. */
  private static String look(HSSFCell cell) {
    return cell == null
        ? ""
        : String.join(
            "\0",
            XlsCells.shown(cell),
            XlsCells.result(cell),
            cell.getCellStyle().getDataFormatString());
  }

  /** The size and a digest of each stream beside the workbook's own. */
  private static Map<String, Integer> streams(HSSFWorkbook workbook) throws IOException {
    Map<String, Integer> streams = new TreeMap<>();
    collect(workbook.getDirectory(), "", streams);
    streams.keySet().removeIf(XlsFile.CONTENT::equalsIgnoreCase);
    return streams;
  }

  private static void collect(DirectoryEntry folder, String path, Map<String, Integer> streams)
      throws IOException {
    for (Entry entry : folder) {
      String name = path + entry.getName();
      if (entry instanceof DirectoryEntry inner) {
        collect(inner, name + "/", streams);
      } else if (entry instanceof DocumentEntry document) {
        try (DocumentInputStream in = new DocumentInputStream(document);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
          in.transferTo(bytes);
          streams.put(name, Arrays.hashCode(bytes.toByteArray()));
        }
      }
    }
  }

  private void requireSame(Object wanted, Object found, String what) throws WorkbookRefusal {
    if (!wanted.equals(found)) {
      throw wrong(what);
    }
  }

  private WorkbookRefusal wrong(String what) {
    return meant
        .file()
        .refusal(
            Kind.UNSUPPORTED,
            "was left as it was, because %s would not have come through unharmed: save it as .xlsx and run again"
                .formatted(what));
  }
}
