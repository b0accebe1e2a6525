package fineweight.workbook.office;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.corpus.Filling;
import fineweight.workbook.corpus.Opening;
import fineweight.workbook.corpus.PlantedCopies;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An office opens what we write, shows the owner's cells as before and calculates what we did. */
class OfficeTest {
  private static final String PLANTED = "-Planted coins.csv";

  @TempDir Path folder;

  @Test
  void ownerCellsReadTheSameAndFiguresAreCalculatedTheSame() throws Exception {
    Office office = Office.onThisMachine();
    List<Path> copies = new ArrayList<>(PlantedCopies.in(folder.resolve("before")));
    copies.removeIf(each -> !each.toString().endsWith(".xlsx"));
    List<Path> before = new ArrayList<>();
    List<Path> after = new ArrayList<>();
    for (Path copy : copies) {
      Path filled = Files.createDirectories(folder.resolve("after")).resolve(copy.getFileName());
      Files.copy(copy, filled);
      if (fill(filled)) {
        before.add(copy);
        after.add(filled);
      }
    }
    List<Path> unreadable = office.csv(before, folder.resolve("read-before"), false);
    for (Path crashed : unreadable) {
      System.out.println("  the office crashes on " + crashed.getFileName() + " as it came");
      after.removeIf(each -> each.endsWith(crashed.getFileName()));
    }
    List<String> problems = new ArrayList<>();
    office.csv(after, folder.resolve("read-after"), false).stream()
        .map(each -> "the office crashes on what we made of " + each.getFileName())
        .forEach(problems::add);
    int sheets = compareSheets(problems);
    office.csv(after, folder.resolve("calculated"), true);
    int figures = compareFigures(problems, after);
    System.out.printf(
        "office: %d files, %d sheets the same, %d planted sheets calculated%n",
        after.size(), sheets, figures);
    problems.forEach(each -> System.out.println("  FAILED " + each));
    assertThat(problems).isEmpty();
    assertThat(figures).isEqualTo(after.size()).isGreaterThan(5 * unreadable.size());
  }

  private static boolean fill(Path file) throws IOException {
    try (Workbook workbook = Opening.XLSX.open(file)) {
      workbook.save(Filling.ofPlanted().columns());
      return true;
    } catch (WorkbookRefusal refusal) {
      return false;
    }
  }

  private int compareSheets(List<String> problems) throws IOException {
    int same = 0;
    for (Path before : csvFiles("read-before")) {
      String name = before.getFileName().toString();
      Path after = folder.resolve("read-after").resolve(name);
      if (name.endsWith(PLANTED)) {
        continue;
      }
      if (Files.exists(after)
          && Files.readString(before, StandardCharsets.UTF_8)
              .equals(Files.readString(after, StandardCharsets.UTF_8))) {
        same++;
      } else {
        problems.add("the office reads " + name + " otherwise than before");
      }
    }
    return same;
  }

  private int compareFigures(List<String> problems, List<Path> files) throws IOException {
    for (Path file : files) {
      String name = file.getFileName().toString().replaceFirst("\\.xlsx$", "") + PLANTED;
      List<CsvRecord> calculated = rows(folder.resolve("calculated").resolve(name));
      List<CsvRecord> read = rows(folder.resolve("read-after").resolve(name));
      BigDecimal sum = BigDecimal.ZERO;
      for (int row = 2; row <= 6; row++) {
        // The planted doubles are stored as 1: this proves that the office did calculate.
        if (calculated.get(row).getField(4).equals("1") || !read.get(row).getField(4).equals("1")) {
          problems.add(name + " row " + (row + 1) + ": not calculated");
        }
        BigDecimal ounces = new BigDecimal(calculated.get(row).getField(5));
        sum = sum.add(ounces);
        BigDecimal melt = new BigDecimal(calculated.get(row).getField(7));
        BigDecimal stored = new BigDecimal(read.get(row).getField(7));
        if (melt.compareTo(stored) != 0
            || melt.compareTo(
                    ounces.multiply(BigDecimal.valueOf(30)).setScale(2, RoundingMode.HALF_UP))
                != 0) {
          problems.add(name + " row " + (row + 1) + ": " + stored + " stored, " + melt);
        }
        if (!calculated.get(row).getField(8).equals(read.get(row).getField(8))) {
          problems.add(name + " row " + (row + 1) + ": " + calculated.get(row).getField(8));
        }
      }
      // The owner's total was stored as 0; without its result the office calculates it.
      BigDecimal total = new BigDecimal(read.get(8).getField(0));
      if (total.subtract(sum).abs().compareTo(new BigDecimal("1E-12")) > 0) {
        problems.add(name + ": the owner's total is " + total + ", not " + sum);
      }
    }
    return files.size();
  }

  @Test
  void whatWeWriteCanBePrinted() throws Exception {
    Office office = Office.onThisMachine();
    List<Path> copies = PlantedCopies.in(folder.resolve("print"));
    Path file =
        copies.stream()
            .filter(each -> each.endsWith("SimpleWithComments.xlsx"))
            .findFirst()
            .orElseThrow();
    assertThat(fill(file)).isTrue();
    office.pdf(file, folder.resolve("pdf"));
    assertThat(folder.resolve("pdf/SimpleWithComments.pdf")).isNotEmptyFile();
  }

  private static List<CsvRecord> rows(Path file) throws IOException {
    try (CsvReader<CsvRecord> rows = CsvReader.builder().skipEmptyLines(false).ofCsvRecord(file)) {
      return rows.stream().toList();
    }
  }

  private List<Path> csvFiles(String name) throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve(name))) {
      return files.sorted().toList();
    }
  }
}
