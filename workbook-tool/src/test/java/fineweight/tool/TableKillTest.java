package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.table.OpenedPieces;
import fineweight.table.TableJournal;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.Row;
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

  private Path emptyList() throws IOException {
    Path workbook = folder.resolve("coins.xlsx");
    try (XSSFWorkbook made = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(workbook)) {
      XSSFRow headings = made.createSheet("Coins").createRow(0);
      headings.createCell(0).setCellValue("Lot");
      headings.createCell(1).setCellValue("Description");
      made.write(out);
    }
    return workbook;
  }

  private static List<String> descriptions(Path workbook) throws IOException {
    List<String> words = new ArrayList<>();
    try (InputStream in = Files.newInputStream(workbook);
        XSSFWorkbook read = new XSSFWorkbook(in)) {
      for (Row row : read.getSheetAt(0)) {
        words.add(row.getCell(1).getStringCellValue());
      }
    }
    return words.subList(1, words.size());
  }

  private void typeAllAndBeKilled(Path workbook) throws Exception {
    for (int i = 0; i < PIECES.size(); i++) {
      Process table = table(workbook);
      try {
        type(table, PIECES.get(i));
        awaitLine(table, (i + 1) + " typed");
      } finally {
        table.destroyForcibly().waitFor(30, TimeUnit.SECONDS);
      }
    }
  }

  @Test
  void losesNothingAndDoublesNothingWhenKilledAfterEachPiece() throws Exception {
    Path workbook = emptyList();
    typeAllAndBeKilled(workbook);
    assertThat(descriptions(workbook)).isEmpty();
    Process last = table(workbook);
    type(last, "save");
    awaitLine(last, "3 pieces are saved");
    assertThat(last.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(descriptions(workbook)).isEqualTo(PIECES);
    assertThat(folder.resolve("coins.xlsx.table-journal")).doesNotExist();
  }

  /** A moment before, while and after the rows are written, as it happens. */
  @Test
  void losesNothingAndDoublesNothingWhenKilledWhileSaving() throws Exception {
    for (int wait : new int[] {0, 40, 90, 150, 250, 600}) {
      Files.deleteIfExists(folder.resolve("coins.xlsx"));
      Path workbook = emptyList();
      Path journal = folder.resolve("coins.xlsx.table-journal");
      writeJournal(journal);
      Process killed = table(workbook);
      try {
        awaitLine(killed, "3 pieces typed before");
        type(killed, "save");
        Thread.sleep(wait);
      } finally {
        killed.destroyForcibly().waitFor(30, TimeUnit.SECONDS);
      }
      boolean wasSaved = !descriptions(workbook).isEmpty();
      if (Files.exists(journal)) {
        Process again = table(workbook);
        type(again, wasSaved ? "quit" : "save");
        awaitLine(again, wasSaved ? "were saved; a new lot is begun" : "3 pieces are saved");
        assertThat(again.waitFor(60, TimeUnit.SECONDS)).isTrue();
      }
      assertThat(descriptions(workbook)).as("killed after " + wait + " ms").isEqualTo(PIECES);
      Files.deleteIfExists(journal);
    }
  }

  private static void writeJournal(Path journal) throws IOException {
    try (TableJournal begun = TableJournal.open(journal)) {
      OpenedPieces pieces = new OpenedPieces(begun);
      for (String piece : PIECES) {
        pieces.add(piece);
      }
    }
  }
}
