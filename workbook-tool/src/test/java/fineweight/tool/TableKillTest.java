package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The table as a process of its own, killed after each piece. */
class TableKillTest {
  private static final List<String> PIECES =
      List.of("1921 Morgan dollar", "1964 half dollar", "1943-P war nickel");

  @TempDir Path folder;

  private Process table(Path workbook) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            "fineweight.tool.Main",
            "table",
            workbook.toString(),
            "--spot",
            "XAG=30",
            "--lot",
            "Box 1")
        .redirectErrorStream(true)
        .start();
  }

  private static void type(Process table, String line) throws IOException {
    OutputStream in = table.getOutputStream();
    in.write((line + "\n").getBytes(StandardCharsets.UTF_8));
    in.flush();
  }

  private static void awaitLine(Process table, String part) throws IOException {
    BufferedReader out = table.inputReader(StandardCharsets.UTF_8);
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      if (line.contains(part)) {
        return;
      }
    }
    throw new AssertionError("the table ended without saying \"" + part + "\"");
  }

  @Test
  void losesNothingAndDoublesNothingWhenKilledAfterEachPiece() throws Exception {
    Path workbook = folder.resolve("coins.xlsx");
    try (XSSFWorkbook made = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(workbook)) {
      XSSFRow headings = made.createSheet("Coins").createRow(0);
      headings.createCell(0).setCellValue("Year");
      headings.createCell(1).setCellValue("Denomination");
      made.write(out);
    }
    for (int i = 0; i < PIECES.size(); i++) {
      Process table = table(workbook);
      try {
        type(table, PIECES.get(i));
        awaitLine(table, (i + 1) + " typed");
      } finally {
        table.destroyForcibly().waitFor(30, TimeUnit.SECONDS);
      }
    }
    Process last = table(workbook);
    type(last, "save");
    awaitLine(last, "3 pieces are saved");
    assertThat(last.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(Files.readAllLines(folder.resolve("coins-lot-1.csv")))
        .containsExactly(
            "Number,Lot,Description,Cost",
            "1,Box 1,1921 Morgan dollar,",
            "2,Box 1,1964 half dollar,",
            "3,Box 1,1943-P war nickel,");
    assertThat(folder.resolve("coins.xlsx.table-journal")).doesNotExist();
  }
}
