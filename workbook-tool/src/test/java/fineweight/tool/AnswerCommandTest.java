package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.open.AnyWorkbook;
import fineweight.workbook.save.SafeSave;
import fineweight.workbook.xlsx.XlsxWorkbook;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** An invented list with two open questions, answered on the terminal. */
class AnswerCommandTest {
  @TempDir Path folder;
  private Path file;
  private final StringWriter printed = new StringWriter();

  @BeforeEach
  void refreshAList() throws IOException {
    file = folder.resolve("list.xlsx");
    try (Workbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      Sheet sheet = workbook.createSheet("Coins");
      row(sheet, 0, "Year", "Denomination", "Type", "Count");
      row(sheet, 1, "1942", "5 cents", "Jefferson", "4");
      row(sheet, 2, "1853", "half dime", "Seated", "1");
      row(sheet, 3, "1964", "half dollar", "Kennedy", "2");
      workbook.write(out);
    }
    assertThat(run("refresh", file.toString(), "--spot", "XAG=30")).isZero();
  }

  private static void row(Sheet sheet, int at, String... texts) {
    Row row = sheet.createRow(at);
    for (int i = 0; i < texts.length; i++) {
      row.createCell(i).setCellValue(texts[i]);
    }
  }

  private Surroundings surroundings() {
    SafeSave save = SafeSave.onDisk();
    return new Surroundings(
        new PrintWriter(printed),
        new PrintWriter(printed),
        Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC),
        AnyWorkbook.of(path -> XlsxWorkbook.open(path, save), save));
  }

  private int run(String... args) {
    return Main.run(args, surroundings());
  }

  private int answer(String typed) {
    return new CommandLine(
            new AnswerCommand(surroundings(), new BufferedReader(new StringReader(typed))))
        .execute(file.toString());
  }

  /** The state of a row, whatever column it stands in. */
  private String state(int row) throws IOException {
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      Sheet sheet = workbook.getSheet("Coins");
      for (int column = 0; column < sheet.getRow(0).getLastCellNum(); column++) {
        if (new DataFormatter().formatCellValue(sheet.getRow(0).getCell(column)).equals("State")) {
          return new DataFormatter().formatCellValue(sheet.getRow(row).getCell(column));
        }
      }
    }
    throw new AssertionError("there is no column of states");
  }

  @Test
  void anAnswerSettlesItsRowAndStays() throws IOException {
    assertThat(state(1)).contains("several");
    assertThat(answer("2\n\n")).isZero();
    assertThat(state(1)).contains("valued");
    assertThat(state(2)).contains("several");
    assertThat(run("refresh", file.toString(), "--spot", "XAG=40")).isZero();
    assertThat(state(1)).contains("valued");
  }

  @Test
  void stoppingAtOnceWritesNothing() throws IOException {
    byte[] before = Files.readAllBytes(file);
    assertThat(answer("q\n")).isZero();
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
    assertThat(printed.toString()).contains("not written");
  }

  @Test
  void aSlipOfTheFingerIsAskedAgain() throws IOException {
    assertThat(answer("9\nx\n1\nq\n")).isZero();
    assertThat(printed.toString()).contains("Type a number from 1 to");
    assertThat(state(1)).doesNotContain("several");
  }

  @Test
  void aWorkbookNeverRefreshedIsPointedToRefresh() throws IOException {
    try (Workbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      workbook.createSheet("Coins");
      workbook.write(out);
    }
    assertThat(answer("1\n")).isZero();
    assertThat(printed.toString()).contains("Run refresh on it first");
  }
}
