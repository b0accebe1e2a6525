package fineweight.workbook.hostile;

import fineweight.workbook.Cell;
import fineweight.workbook.SheetSummary;
import fineweight.workbook.Workbook;
import fineweight.workbook.WorkbookEdit;
import fineweight.workbook.WorkbookRefusal;
import fineweight.workbook.corpus.Filling;
import fineweight.workbook.corpus.Opening;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.List;

/**
 * The process that meets the file: reads all of it, makes a dry run and a real run, and ends with
 * exit code 0, or with 10 and more (by kind) after one sentence.
 */
public final class HostileTrial {
  private HostileTrial() {}

  public static void main(String[] arguments) {
    long start = System.nanoTime();
    int code = run(Path.of(arguments[0]));
    long wall = (System.nanoTime() - start) / 1_000_000;
    long cpu =
        ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime()
            / 1_000_000;
    System.out.printf("time %d %d%n", wall, cpu);
    System.exit(code);
  }

  private static int run(Path file) {
    try (Workbook workbook = Opening.ANY.open(file)) {
      long[] cells = new long[1];
      for (SheetSummary sheet : workbook.sheets()) {
        if (sheet.isTable()) {
          workbook.read(
              sheet.name(), column -> true, Integer.MAX_VALUE, row -> cells[0] += show(row));
        }
      }
      Filling filling = filling(workbook);
      WorkbookEdit edit = filling.columns();
      workbook.preview(edit, change -> {});
      Workbook.SaveResult result = workbook.save(edit);
      System.out.println("filled " + result.changedCells() + ", read " + cells[0]);
      return 0;
    } catch (WorkbookRefusal refusal) {
      System.out.println("refused: " + refusal.getMessage());
      return 10 + refusal.kind().ordinal();
    } catch (java.io.IOException e) {
      System.out.println("could not close: " + e);
      return 1;
    }
  }

  /** Every value goes to the output, where the test looks for what must not be there. */
  private static int show(List<Cell> row) {
    row.stream().limit(5).forEach(each -> System.out.println(each.value()));
    return row.size();
  }

  /** New columns at the right of the first sheet with cells. */
  static Filling filling(Workbook workbook) throws WorkbookRefusal {
    for (SheetSummary sheet : workbook.sheets()) {
      if (sheet.isTable()) {
        Workbook.UsedArea used = workbook.usedArea(sheet.name());
        int last = Math.max(3, Math.min(used.lastRow(), 100));
        return new Filling(sheet.name(), 0, 1, last, used.lastColumn() + 1);
      }
    }
    return new Filling("", 0, 1, 2, 0);
  }
}
