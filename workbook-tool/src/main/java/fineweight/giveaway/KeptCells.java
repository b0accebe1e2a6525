package fineweight.giveaway;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The cells of a sheet whose content stays. */
final class KeptCells {
  /**
   * @param number whether the content is a number
   */
  record Content(String text, boolean number) {}

  private final Map<Long, Content> contents = new HashMap<>();

  private static long place(int row, int column) {
    return ((long) row << 16) | column;
  }

  void keep(int row, int column, String text, boolean number) {
    contents.put(place(row, column), new Content(text, number));
  }

  Optional<Content> at(int row, int column) {
    return Optional.ofNullable(contents.get(place(row, column)));
  }
}
