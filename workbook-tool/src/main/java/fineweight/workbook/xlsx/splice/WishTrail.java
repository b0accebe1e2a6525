package fineweight.workbook.xlsx.splice;

import java.util.Arrays;
import java.util.Objects;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;

/**
 * What a pass wished for while it wrote, on its way to the one that reads what was written, perhaps
 * on another thread. So nobody is asked twice, and what is compared is what was meant.
 */
public final class WishTrail {
  private final Queue<Step> steps = new ConcurrentLinkedQueue<>();

  /** Known to the reading thread alone. */
  private boolean missed;

  /** The wishes for one row. */
  private record Step(int row, Wish[] wishes) {
    boolean writes() {
      return Arrays.stream(wishes).anyMatch(wish -> wish != null && wish.writes());
    }
  }

  /** The same wishes, told on their way. */
  RowWishes telling(RowWishes asked) {
    return (row, wishes) -> {
      asked.fill(row, wishes);
      if (Arrays.stream(wishes).anyMatch(Objects::nonNull)) {
        steps.add(new Step(row, wishes.clone()));
      }
    };
  }

  /** Fills in what was wished for a row; rows are asked for from top to bottom. */
  void take(int row, Wish[] wishes) {
    leaveBefore(row);
    Step next = steps.peek();
    if (next != null && next.row() == row) {
      System.arraycopy(next.wishes(), 0, wishes, 0, wishes.length);
      steps.remove();
    } else {
      Arrays.fill(wishes, null);
    }
  }

  /** A row that nobody asked for was not met with. */
  private void leaveBefore(int row) {
    for (Step next = steps.peek(); next != null && next.row() < row; next = steps.peek()) {
      missed |= next.writes();
      steps.remove();
    }
  }

  /** Whether every row that was to be written was met with; to be asked at the end. */
  boolean wereMet() {
    leaveBefore(Integer.MAX_VALUE);
    return !missed;
  }
}
