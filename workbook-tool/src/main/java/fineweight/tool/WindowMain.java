package fineweight.tool;

import java.util.stream.Stream;

/** The entry for a double click: opens the window, on a workbook if one was dropped on the icon. */
public final class WindowMain {
  private WindowMain() {}

  public static void main(String[] words) {
    Main.main(Stream.concat(Stream.of("window"), Stream.of(words)).toArray(String[]::new));
  }
}
