package fineweight.terminal;

import java.io.IOException;
import java.io.Writer;

/**
 * Breaks long lines between words where they end at a terminal, and sets what follows under the
 * text it belongs to. Lines to a file or another program stay whole, so that they can be searched.
 */
final class WholeWords extends Writer {
  private static final String ESCAPE = "\u001B";

  private final Writer to;
  private final Screen screen;
  private final StringBuilder line = new StringBuilder();

  WholeWords(Writer to, Screen screen) {
    this.to = to;
    this.screen = screen;
  }

  @Override
  public void write(char[] text, int from, int length) throws IOException {
    for (int i = from; i < from + length; i++) {
      if (text[i] == '\n') {
        writeLine();
        to.write('\n');
      } else {
        line.append(text[i]);
      }
    }
  }

  private void writeLine() throws IOException {
    // What holds escape codes was laid out by the library that put them in.
    boolean stays = line.length() <= Terminal.NARROWEST || line.indexOf(ESCAPE) >= 0;
    to.write(stays || !screen.breaksLines() ? line.toString() : broken(screen.width()));
    line.setLength(0);
  }

  private String broken(int width) {
    StringBuilder lines = new StringBuilder();
    String rest = line.toString();
    String indent = " ".repeat(hanging(rest, width));
    while (rest.codePointCount(0, rest.length()) > width) {
      int end = rest.offsetByCodePoints(0, width);
      int space = rest.lastIndexOf(' ', end);
      // A word longer than the line, such as a path, stays whole: the terminal breaks it.
      if (space < 0 || rest.substring(0, space).isBlank()) {
        space = rest.indexOf(' ', end);
      }
      if (space < 0) {
        break;
      }
      lines.append(rest, 0, space).append('\n');
      rest = indent + rest.substring(space).stripLeading();
    }
    return lines.append(rest).toString();
  }

  /**
   * Where the text behind a label or the figures of a table begins, else two more than the line.
   */
  private static int hanging(String line, int width) {
    int start = line.length() - line.stripLeading().length();
    int half = Math.min(line.length(), width / 2);
    int gap = line.lastIndexOf("  ", half - 2);
    return gap > start ? gap + 2 : Math.min(start + 2, width / 2);
  }

  /** Gives on what stands in an open line, such as a question that waits for an answer. */
  @Override
  public void flush() throws IOException {
    to.write(line.toString());
    line.setLength(0);
    to.flush();
  }

  @Override
  public void close() throws IOException {
    flush();
    to.close();
  }
}
