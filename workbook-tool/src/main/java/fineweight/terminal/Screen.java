package fineweight.terminal;

import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.IntSupplier;

/** What can be shown where results are seen; asked for when it is first needed. */
public final class Screen {
  private static final int WIDTH_OF_A_FILE = 80;

  /** Lines that go to no terminal. */
  public static final Screen NONE = new Screen(() -> false, () -> WIDTH_OF_A_FILE, Map.of());

  private final BooleanSupplier asked;
  private final IntSupplier askedWidth;
  private final Map<String, String> environment;
  private Boolean terminal;
  private int width;
  private boolean whole;

  Screen(BooleanSupplier asked, IntSupplier askedWidth, Map<String, String> environment) {
    this.asked = asked;
    this.askedWidth = askedWidth;
    this.environment = environment;
  }

  /** A terminal of that width without colours. */
  public static Screen of(int width) {
    return new Screen(() -> true, () -> width, Map.of("NO_COLOR", "1"));
  }

  public static Screen ofThisProcess() {
    Map<String, String> environment = System.getenv();
    BooleanSupplier terminal =
        () -> System.console() != null && Terminal.isTerminal(Terminal.Stream.OUT);
    return new Screen(
        terminal,
        () ->
            Terminal.widthSaid(environment)
                .orElseGet(() -> terminal.getAsBoolean() ? Terminal.width() : WIDTH_OF_A_FILE),
        environment);
  }

  /** Characters in a line of a table: COLUMNS, else what the terminal says, else 80. */
  public int width() {
    if (width == 0) {
      width = askedWidth.getAsInt();
    }
    return width;
  }

  /** Whether lines end at a terminal, which would break long ones in the middle of a word. */
  public boolean isTerminal() {
    if (terminal == null) {
      terminal = asked.getAsBoolean();
    }
    return terminal;
  }

  /** Whether words may be set off by escape codes: only at a terminal, and never with NO_COLOR. */
  public boolean isColoured() {
    return environment.getOrDefault("NO_COLOR", "").isEmpty() && isTerminal();
  }

  /** What follows is for another program, even at a terminal: its lines are not broken. */
  public void keepLinesWhole() {
    whole = true;
  }

  boolean breaksLines() {
    return !whole && isTerminal();
  }

  /** Results, in the letters that can be shown and in lines that fit. */
  public PrintWriter results(OutputStream out, Charset letters) {
    return new PrintWriter(new WholeWords(plain(out, letters), this), true);
  }

  /** Complaints and the line of progress, in the letters that can be shown. */
  public static PrintWriter complaints(OutputStream err, Charset letters) {
    return new PrintWriter(plain(err, letters), true);
  }

  private static Writer plain(OutputStream out, Charset letters) {
    return new PlainSigns(new OutputStreamWriter(out, letters), letters);
  }
}
