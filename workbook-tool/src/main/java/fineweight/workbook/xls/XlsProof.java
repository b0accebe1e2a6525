package fineweight.workbook.xls;

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
import java.util.Set;
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
  private final XlsFile file;
  private final HSSFWorkbook meant;
  private final XlsChanges changes;
  private final Set<String> removedSheets;

  XlsProof(XlsFile file, HSSFWorkbook meant, XlsChanges changes, Set<String> removedSheets) {
    this.file = file;
    this.meant = meant;
    this.changes = changes;
    this.removedSheets = removedSheets;
  }

  void require(Path written) throws IOException, WorkbookRefusal {
    try (InputStream in = Files.newInputStream(written);
        HSSFWorkbook copy = new HSSFWorkbook(in, true);
        HSSFWorkbook original = file.open()) {
      for (int i = 0; i < original.getNumberOfSheets(); i++) {
        String name = original.getSheetName(i);
        if (!removedSheets.contains(name)) {
          requireOwnersCells(original.getSheetAt(i), copy.getSheet(name));
        }
      }
      requireMeantCells(copy);
      requireSame(XlsNames.all(meant), XlsNames.all(copy), "a name");
      requireSame(original.getAllPictures().size(), copy.getAllPictures().size(), "a picture");
      requireSame(streams(original), streams(copy), "a stream");
    }
  }

  private void requireOwnersCells(HSSFSheet original, HSSFSheet copy) throws WorkbookRefusal {
    if (copy == null) {
      throw wrong("sheet " + original.getSheetName());
    }
    requireSame(original.getMergedRegions(), copy.getMergedRegions(), "a merged area");
    int lastRow = Math.max(original.getLastRowNum(), copy.getLastRowNum());
    for (int row = 0; row <= lastRow; row++) {
      for (int column = 0; column < Math.max(width(original, row), width(copy, row)); column++) {
        CellPlace place = new CellPlace(original.getSheetName(), row, column);
        HSSFCell was = XlsCells.cell(original, row, column);
        HSSFCell is = XlsCells.cell(copy, row, column);
        if (!changes.has(place) && !look(was).equals(look(is))) {
          throw wrong("cell " + place);
        }
      }
    }
  }

  private void requireMeantCells(HSSFWorkbook copy) throws WorkbookRefusal {
    requireSame(meant.getNumberOfSheets(), copy.getNumberOfSheets(), "a sheet");
    for (var change : changes.cells()) {
      CellPlace place = change.place();
      HSSFSheet sheet = meant.getSheet(place.sheet());
      if (sheet != null) {
        String wanted = look(XlsCells.cell(sheet, place.row(), place.column()));
        HSSFSheet found = copy.getSheet(place.sheet());
        if (!wanted.equals(look(XlsCells.cell(found, place.row(), place.column())))) {
          throw wrong("cell " + place);
        }
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
    return file.refusal(
        Kind.UNSUPPORTED,
        "was left as it was, because %s would not have come through unharmed: save it as .xlsx and run again"
            .formatted(what));
  }
}
