package fineweight.benchmark;

import fineweight.workbook.CellContent;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.save.FileFingerprint;
import fineweight.workbook.save.FileReplacement;
import fineweight.workbook.save.SafeSave;
import fineweight.workbook.xlsx.XlsxWorkbook;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.IntFunction;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** One way to do the work, in a process of its own: {@code Contender KIND FILE ROWS TIMES}. */
final class Contender {
  /** Writes beside the file and moves, without backup, flush to disk and reading back. */
  private static final class Plain implements FileReplacement {
    @Override
    public boolean checks() {
      return false;
    }

    @Override
    public Path replace(Path target, FileFingerprint asRead, Writer writer, Check check)
        throws WorkbookRefusal {
      Path written = target.resolveSibling("written");
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(written), 1 << 16)) {
        writer.writeTo(out);
      } catch (IOException e) {
        throw new WorkbookRefusal(WorkbookRefusal.Kind.FILE, "not written", e);
      }
      return written;
    }
  }

  private Contender() {}

  public static void main(String[] arguments) throws Exception {
    Path file = Path.of(arguments[1]);
    int rows = Integer.parseInt(arguments[2]);
    int times = Integer.parseInt(arguments[3]);
    for (int i = 0; i < times; i++) {
      long start = System.nanoTime();
      run(arguments[0], file, rows);
      System.out.println("lap " + (System.nanoTime() - start) / 1_000_000.0);
    }
    // The beans of the management interface would take a good part of a small run to load.
    long cpu = ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis();
    System.out.println("cpu " + cpu);
    System.out.println("peak " + Measurement.peak(ProcessHandle.current().pid()));
  }

  private static void run(String kind, Path file, int rows) throws Exception {
    switch (kind) {
      case "nothing" -> {}
      case "floor" -> floor(file);
      case "splice" -> engine(file, rows, new Plain());
      case "engine" -> engine(file, rows, SafeSave.onDisk());
      case "poi" -> poi(file, rows);
      case "appraise" -> DescriptionList.appraise(file);
      case "refresh" -> DescriptionList.refresh(file);
      default -> throw new IllegalArgumentException(kind);
    }
  }

  /** Inflates and deflates the sheet part alone. */
  private static void floor(Path file) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile());
        InputStream in = zip.getInputStream(zip.getEntry(InventoryFile.SHEET_PART));
        ZipOutputStream out =
            new ZipOutputStream(
                new BufferedOutputStream(
                    Files.newOutputStream(file.resolveSibling("floor.zip")), 1 << 16))) {
      out.putNextEntry(new ZipEntry(InventoryFile.SHEET_PART));
      in.transferTo(out);
    }
  }

  private static void engine(Path file, int rows, FileReplacement replacement)
      throws WorkbookRefusal, IOException {
    try (Workbook workbook = XlsxWorkbook.open(file, replacement)) {
      if (!workbook.save(FillingWork.edit(rows)).written()) {
        throw new IllegalStateException("nothing was written");
      }
    }
  }

  private static void poi(Path file, int rows) throws IOException {
    ZipSecureFile.setMinInflateRatio(0);
    List<IntFunction<CellContent>> contents = FillingWork.contents();
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        OutputStream out =
            new BufferedOutputStream(
                Files.newOutputStream(file.resolveSibling("poi.xlsx")), 1 << 16)) {
      Sheet sheet = workbook.getSheet(InventoryFile.SHEET);
      for (int column = 0; column < contents.size(); column++) {
        sheet
            .getRow(0)
            .createCell(FillingWork.FIRST + column)
            .setCellValue(FillingWork.HEADERS.get(column));
      }
      for (int row = 1; row <= rows; row++) {
        Row line = sheet.getRow(row);
        for (int column = 0; column < contents.size(); column++) {
          put(line.createCell(FillingWork.FIRST + column), contents.get(column).apply(row));
        }
      }
      workbook.write(out);
    }
  }

  private static void put(Cell cell, CellContent content) {
    if (content instanceof CellContent.Text text) {
      cell.setCellValue(text.value());
    } else if (content instanceof CellContent.Number number) {
      cell.setCellValue(number.value().doubleValue());
    } else if (content instanceof CellContent.Formula formula) {
      cell.setCellFormula(formula.formula());
      cell.setCellValue(formula.result().doubleValue());
    }
  }
}
