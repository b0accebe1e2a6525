package fineweight.workbook.xls;

import static fineweight.workbook.xls.XlsFiles.column;
import static fineweight.workbook.xls.XlsFiles.columns;
import static fineweight.workbook.xls.XlsFiles.open;
import static fineweight.workbook.xls.XlsFiles.poi;
import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.Cell;
import fineweight.workbook.CellContent;
import fineweight.workbook.Workbook.UsedArea;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.ColumnPlace;
import fineweight.workbook.WorkbookEdit.Removal;
import fineweight.workbook.open.CorpusFiles;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.hssf.usermodel.HSSFPictureData;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.util.LittleEndian;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks made by others get a column, keep everything, and give the column back. */
class XlsCorpusTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {"shared_formulas.xls", "SimpleWithImages.xls", "WithConditionalFormatting.xls"})
  void losesNothing(String name) throws Exception {
    Path original = CorpusFiles.folder("workbooks").resolve(name);
    Path file = CorpusFiles.copy(original, folder);
    String sheet;
    int ours;
    try (XlsWorkbook workbook = open(file)) {
      sheet = workbook.sheets().get(0).name();
      ours = workbook.usedArea(sheet).lastColumn() + 1;
      WorkbookEdit edit = edit(sheet, ours, workbook.usedArea(sheet));
      assertThat(workbook.save(edit).written()).isTrue();
      assertThat(open(file).save(edit).written()).as("a second run").isFalse();
    }

    assertThat(cellsOutside(file, sheet, ours)).isEqualTo(cellsOutside(original, sheet, ours));
    assertThat(pictures(file)).isEqualTo(pictures(original));
    assertThat(missingRecords(original, file)).isEmpty();

    try (XlsWorkbook workbook = open(file)) {
      workbook.save(
          new WorkbookEdit(
              List.of(),
              List.of(),
              List.of(),
              new Removal(List.of(new ColumnPlace(sheet, 0, ours)), List.of(), List.of())));
      assertThat(open(file).usedArea(sheet)).isEqualTo(open(original).usedArea(sheet));
    }
    assertThat(cellsOutside(file, sheet, -1)).isEqualTo(cellsOutside(original, sheet, -1));
  }

  private static WorkbookEdit edit(String sheet, int ours, UsedArea used) {
    return columns(
        sheet,
        Math.max(1, used.lastRow()),
        column(ours, "Ours", "0.00", row -> new CellContent.Number(new BigDecimal("12.5"))));
  }

  private static List<Cell> cellsOutside(Path file, String edited, int column) throws Exception {
    List<Cell> cells = new ArrayList<>();
    try (XlsWorkbook workbook = open(file)) {
      for (var sheet : workbook.sheets()) {
        workbook.read(
            sheet.name(),
            one -> !sheet.name().equals(edited) || one != column,
            Integer.MAX_VALUE,
            cells::addAll);
      }
    }
    return cells.stream().filter(cell -> cell.place().column() != column).toList();
  }

  private static List<Integer> pictures(Path file) throws Exception {
    try (HSSFWorkbook workbook = poi(file)) {
      return workbook.getAllPictures().stream()
          .map(HSSFPictureData::getData)
          .map(Arrays::hashCode)
          .toList();
    }
  }

  /**
   * The kinds of record that became fewer, read from the bytes; those left out are indexes that
   * every writer makes anew.
   */
  private static Map<String, Integer> missingRecords(Path original, Path copy) throws Exception {
    Map<String, Integer> missing = new TreeMap<>();
    Map<Integer, Integer> after = records(copy);
    records(original)
        .forEach(
            (kind, count) -> {
              int now = after.getOrDefault(kind, 0);
              if (now < count && !REBUILT.contains(kind)) {
                missing.put("0x%03x".formatted(kind), now - count);
              }
            });
    return missing;
  }

  /**
   * Continuations, row blocks' and the index's positions, blanks and numbers stored in runs or in
   * short: what is in them, the comparison of the cells shows.
   */
  private static final List<Integer> REBUILT =
      List.of(0x003C, 0x00D7, 0x020B, 0x00BE, 0x00BD, 0x027E);

  private static Map<Integer, Integer> records(Path file) throws Exception {
    Map<Integer, Integer> records = new HashMap<>();
    try (POIFSFileSystem container = new POIFSFileSystem(Files.newInputStream(file));
        var stream = container.createDocumentInputStream("Workbook")) {
      byte[] bytes = stream.readAllBytes();
      for (int at = 0; at + 4 <= bytes.length; at += 4 + LittleEndian.getUShort(bytes, at + 2)) {
        records.merge(LittleEndian.getUShort(bytes, at), 1, Integer::sum);
      }
    }
    return records;
  }
}
