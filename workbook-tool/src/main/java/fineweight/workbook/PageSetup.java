package fineweight.workbook;

import java.util.List;

/**
 * How a new sheet of ours is printed: as wide as one page. Its owner may change it; it is not set
 * again.
 *
 * @param landscape whether the paper lies on its long side
 * @param repeatedRows the rows from the top that every page begins with; 0 for none
 * @param breaks rows, from 0, that a new page begins with
 */
public record PageSetup(boolean landscape, int repeatedRows, List<Integer> breaks) {
  public PageSetup {
    breaks = List.copyOf(breaks);
  }

  public static PageSetup upright(int repeatedRows) {
    return new PageSetup(false, repeatedRows, List.of());
  }

  public static PageSetup wide(int repeatedRows) {
    return new PageSetup(true, repeatedRows, List.of());
  }
}
