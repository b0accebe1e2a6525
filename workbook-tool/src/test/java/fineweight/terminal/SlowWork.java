package fineweight.terminal;

import fineweight.refresh.inventory.Progress;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** A process that works for as many milliseconds as it is told, row after row. */
public final class SlowWork {
  static final int LAST = 9_999;

  private SlowWork() {}

  public static void main(String[] arguments) throws InterruptedException {
    int rows = LAST + 1;
    long nanos = Long.parseLong(arguments[0]) * 1_000_000;
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    try (ProgressLine line = new ProgressLine(err)) {
      long began = System.nanoTime();
      for (int row = 0; row < rows; row++) {
        while (System.nanoTime() - began < nanos * row / rows) {
          Thread.sleep(1);
        }
        line.at(Progress.Stage.READING, row, LAST);
      }
    }
    System.out.println("done");
    err.println("no complaint");
  }
}
