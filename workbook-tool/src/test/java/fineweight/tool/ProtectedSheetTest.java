package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet that its owner has locked is filled only when he says so. */
class ProtectedSheetTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"coins.xlsx", "coins.xls"})
  void isFilledOnRequestAndStaysProtected(String name) throws Exception {
    Path file = list(name, "Coins", "not a word anyone knows");
    byte[] before = Files.readAllBytes(file);

    CommandRun refused = CommandRun.refresh(file);
    assertThat(refused.code()).isEqualTo(7);
    assertThat(refused.err())
        .contains("sheet \"Coins\"", "protected against changes", "--fill-protected")
        .hasLineCount(1);
    assertThat(CommandRun.refresh(file, "--dry-run").code()).isZero();
    assertThat(file).hasBinaryContent(before);

    CommandRun filled = CommandRun.refresh(file, "--fill-protected");
    assertThat(filled.code()).as(filled.err()).isZero();
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      assertThat(workbook.getSheet("Coins").getProtect()).isTrue();
      assertThat(workbook.getSheet("Coins").getRow(1).getLastCellNum()).isGreaterThan((short) 5);
    }
  }

  @Test
  void anotherSheetMayBeProtected() throws Exception {
    Path file = list("coins.xlsx", "Rules", "x");
    CommandRun filled = CommandRun.refresh(file);
    assertThat(filled.code()).as(filled.err()).isZero();
  }

  private Path list(String name, String locked, String word) throws IOException {
    Path file = folder.resolve(name);
    try (Workbook workbook = name.endsWith("x") ? new XSSFWorkbook() : new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      Sheet coins = workbook.createSheet("Coins");
      coins.createRow(0).createCell(0).setCellValue("Description");
      coins.createRow(1).createCell(0).setCellValue("1964-D quarter");
      workbook.createSheet("Rules").createRow(0).createCell(0).setCellValue("do not touch");
      workbook.getSheet(locked).protectSheet(word);
      workbook.write(out);
    }
    return file;
  }
}
