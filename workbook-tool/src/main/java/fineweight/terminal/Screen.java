package fineweight.terminal;

import java.util.function.BooleanSupplier;
import java.util.function.IntSupplier;

/** How wide lines may be where results are seen; asked for when it is first needed. */
public final class Screen {
  /** Lines that go to no terminal. */
  public static final Screen NONE = new Screen(() -> false, () -> Screen.WIDTH_OF_A_FILE);

  private static final int WIDTH_OF_A_FILE = 100;

  private final BooleanSupplier terminal;
  private final IntSupplier asked;
  private int width;

  private Screen(BooleanSupplier terminal, IntSupplier asked) {
    this.terminal = terminal;
    this.asked = asked;
  }

  /** A terminal of that width. */
  public static Screen of(int width) {
    return new Screen(() -> true, () -> width);
  }

  public static Screen ofThisProcess() {
    return new Screen(
        () -> Terminal.isTerminal(Terminal.Stream.OUT),
        () ->
            Terminal.widthSaid(System.getenv())
                .orElseGet(
                    () ->
                        Terminal.isTerminal(Terminal.Stream.OUT)
                            ? Terminal.width()
                            : WIDTH_OF_A_FILE));
  }

  /** Characters in a line of a table. */
  public int width() {
    if (width == 0) {
      width = asked.getAsInt();
    }
    return width;
  }

  /** Whether lines end at a terminal, which would break long ones in the middle of a word. */
  public boolean isTerminal() {
    return terminal.getAsBoolean();
  }
}
