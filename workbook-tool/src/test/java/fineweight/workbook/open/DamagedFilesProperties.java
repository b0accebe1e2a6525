package fineweight.workbook.open;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.CellContent;
import fineweight.workbook.CellLook;
import fineweight.workbook.ColumnEdit;
import fineweight.workbook.SheetEdit;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookEdit.Removal;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.WorkbookRefusal.Kind;
import fineweight.workbook.save.SafeSave;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Files of others with bytes flipped, cut and swapped: they open, or are refused in words. */
class DamagedFilesProperties {
  private static final List<String> FILES =
      List.of("shared_formulas.xls", "WithConditionalFormatting.xls", "psql.csv", "ErrorTypes.txt");

  private final AnyWorkbook workbooks =
      AnyWorkbook.of(
          file -> {
            throw new WorkbookRefusal(Kind.UNSUPPORTED, "not here.");
          },
          SafeSave.onDisk());

  @Property(tries = 300)
  void damageIsRefusedInWordsOrDoesNoHarm(
      @ForAll @IntRange(min = 0, max = 3) int which, @ForAll long seed) throws IOException {
    Path original = CorpusFiles.folder("workbooks").resolve(FILES.get(which));
    byte[] damaged = damage(Files.readAllBytes(original), new Random(seed));
    Path folder = Files.createTempDirectory("damaged");
    Path file = Files.write(folder.resolve(FILES.get(which)), damaged);
    try {
      readAndEdit(file);
    } catch (WorkbookRefusal refusal) {
      assertThat(refusal.getMessage()).doesNotContain("Exception").endsWith(".");
      assertThat(Files.readAllBytes(file)).isEqualTo(damaged);
    } finally {
      clear(folder);
    }
  }

  private static void clear(Path folder) throws IOException {
    try (Stream<Path> left = Files.list(folder)) {
      for (Path file : left.toList()) {
        assertThat(file.toString()).doesNotEndWith(".part");
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }

  private void readAndEdit(Path file) throws IOException, WorkbookRefusal {
    try (Workbook workbook = workbooks.open(file)) {
      workbook.names();
      for (SheetSummary sheet : workbook.sheets()) {
        workbook.layout(sheet.name());
        workbook.read(sheet.name(), column -> true, 1000, cells -> {});
      }
      String sheet = workbook.sheets().get(0).name();
      int column = workbook.usedArea(sheet).lastColumn() + 1;
      workbook.save(edit(sheet, column, Math.min(1, workbook.usedArea(sheet).lastRow())));
    }
  }

  private static WorkbookEdit edit(String sheet, int column, int lastRow) {
    CellContent half = new CellContent.Number(new BigDecimal("0.5"));
    ColumnEdit ours = new ColumnEdit(column, "Ours", CellLook.GENERAL, 0, row -> half);
    return new WorkbookEdit(
        List.of(new SheetEdit(sheet, 0, 1, lastRow, List.of(ours))),
        List.of(),
        List.of(),
        Removal.NOTHING);
  }

  private static byte[] damage(byte[] content, Random random) {
    byte[] damaged = content.clone();
    switch (random.nextInt(4)) {
      case 0 -> {
        for (int i = 0; i < 1 + random.nextInt(20); i++) {
          damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
        }
      }
      case 1 -> damaged = Arrays.copyOf(damaged, random.nextInt(damaged.length));
      case 2 -> {
        int length = Math.min(64, damaged.length / 4);
        int from = random.nextInt(damaged.length - length);
        int to = random.nextInt(damaged.length - length);
        System.arraycopy(content, from, damaged, to, length);
      }
      default -> {
        int at = random.nextInt(damaged.length);
        damaged[at] ^= (byte) (1 << random.nextInt(8));
      }
    }
    return damaged;
  }
}
