package fineweight.template;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.column.HeaderFinder;
import fineweight.column.Headings;
import fineweight.column.InputColumn;
import fineweight.column.RowText;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WorkbookKindTest {
  private static byte[] bytes(StarterWorkbook starter) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    starter.write(out);
    return out.toByteArray();
  }

  private static XSSFWorkbook open(StarterWorkbook starter) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes(starter)));
  }

  @ParameterizedTest
  @EnumSource
  void everyHeadingIsUnderstood(WorkbookKind kind) throws IOException {
    try (XSSFWorkbook workbook = open(StarterWorkbook.empty(kind))) {
      Map<Integer, String> texts = new TreeMap<>();
      workbook
          .getSheet(kind.sheet())
          .getRow(0)
          .forEach(cell -> texts.put(cell.getColumnIndex(), cell.getStringCellValue()));
      Map<Integer, InputColumn> found =
          new HeaderFinder(Headings.standard())
              .find(List.of(new RowText(0, texts)), Set.of())
              .orElseThrow()
              .columns();
      assertThat(found).hasSameSizeAs(texts);
      assertThat(found.values()).doesNotContain(InputColumn.OTHER).doesNotHaveDuplicates();
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyColumnSaysWhatToTypeAndEveryRefusalHelps(WorkbookKind kind) throws IOException {
    try (XSSFWorkbook workbook = open(StarterWorkbook.empty(kind))) {
      int lists = 0;
      for (String name : new String[] {kind.sheet(), "My set"}) {
        XSSFSheet sheet = workbook.getSheet(name);
        if (sheet == null) {
          continue;
        }
        assertThat(sheet.getDataValidations()).hasSize(sheet.getRow(0).getLastCellNum());
        for (XSSFDataValidation entry : sheet.getDataValidations()) {
          assertThat(entry.getPromptBoxText()).isNotBlank().hasSizeLessThan(256);
          if (entry.getShowErrorBox()) {
            assertThat(entry.getErrorBoxText()).isNotBlank().hasSizeLessThan(226);
          }
          lists +=
              entry.getValidationConstraint().getValidationType() == ValidationType.LIST ? 1 : 0;
        }
      }
      assertThat(lists).isGreaterThanOrEqualTo(3);
      assertThat(workbook.getSheet("How to use")).isNotNull();
    }
  }

  @Test
  void aTypeSetTakesTheWordsOfItsProposals() throws IOException {
    try (XSSFWorkbook workbook = open(StarterWorkbook.empty(WorkbookKind.TYPE_SET))) {
      assertThat(workbook.getSheet("Inventory").getDataValidations())
          .filteredOn(
              entry -> entry.getValidationConstraint().getValidationType() == ValidationType.LIST)
          .anySatisfy(
              entry ->
                  assertThat(entry.getValidationConstraint().getExplicitListValues())
                      .startsWith("keep", "sell"));
    }
  }

  @ParameterizedTest
  @EnumSource
  void demoRowsSayThatTheyAreInvented(WorkbookKind kind) throws IOException {
    try (XSSFWorkbook workbook = open(StarterWorkbook.withDemoRows(kind))) {
      XSSFSheet sheet = workbook.getSheet(kind.sheet());
      for (int row = 1; row <= sheet.getLastRowNum(); row++) {
        StringBuilder words = new StringBuilder();
        sheet.getRow(row).forEach(cell -> words.append(cell).append('|'));
        assertThat(words.toString()).contains("nvented");
      }
      assertThat(sheet.getLastRowNum()).isGreaterThan(5);
      assertThat(workbook.getSheet("How to use").getRow(1).getCell(1).getStringCellValue())
          .contains("invented", "sheet " + kind.sheet());
    }
    assertThat(bytes(StarterWorkbook.withDemoRows(kind)))
        .isEqualTo(bytes(StarterWorkbook.withDemoRows(kind)));
  }
}
