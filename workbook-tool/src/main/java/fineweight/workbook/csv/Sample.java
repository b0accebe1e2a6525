package fineweight.workbook.csv;

import fineweight.workbook.WorkbookRefusal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** The first lines of a text table, cut at one delimiter, to see whether that makes sense. */
final class Sample {
  private static final int LINES = 500;
  private static final char[] DELIMITERS = {',', ';', '\t', '|'};

  /** A first line that tells the delimiter, as some offices write and read it. */
  private static final Pattern TOLD = Pattern.compile("sep=");

  private static final String AROUND = "[^\\d.,]{0,5}";
  private static final Pattern WITH_COMMA =
      Pattern.compile(AROUND + "(\\d{1,3}([. ']\\d{3})+|\\d+),(\\d{1,2}|\\d{4,})" + AROUND);
  private static final Pattern WITH_POINT =
      Pattern.compile(AROUND + "(\\d{1,3}([, ']\\d{3})+|\\d+)\\.(\\d{1,2}|\\d{4,})" + AROUND);

  private final char delimiter;
  private final List<Line> lines;

  private Sample(char delimiter, List<Line> lines) {
    this.delimiter = delimiter;
    this.lines = lines;
  }

  /** The cut that gives the most even table; commas if none gives more than one column. */
  static Sample of(Path file, TextEncoding encoding) throws IOException {
    Sample best = null;
    for (char delimiter : DELIMITERS) {
      Sample sample = new Sample(delimiter, firstLines(file, encoding, delimiter));
      if (sample.isTold()) {
        return sample;
      }
      if (best == null || sample.evenness() > best.evenness()) {
        best = sample;
      }
    }
    return best;
  }

  private static List<Line> firstLines(Path file, TextEncoding encoding, char delimiter)
      throws IOException {
    List<Line> lines = new ArrayList<>();
    try (LineReader reader =
        new LineReader(file.getFileName().toString(), encoding.reader(file), delimiter)) {
      for (Line line = reader.next(); line != null && lines.size() < LINES; line = reader.next()) {
        if (!line.isBlank()) {
          lines.add(line);
        }
      }
    } catch (WorkbookRefusal e) {
      // Whether the file is sound shows when all of it is read with the delimiter chosen.
      return lines;
    }
    return lines;
  }

  char delimiter() {
    return delimiter;
  }

  private boolean isTold() {
    if (lines.isEmpty()) {
      return false;
    }
    List<Field> first = lines.get(0).fields();
    return first.size() == 2
        && TOLD.matcher(first.get(0).text()).matches()
        && first.get(1).text().isEmpty();
  }

  /**
   * In thousandths: the share of lines that have the commonest number of fields, half as much again
   * if the first line has it, and a little for each field.
   */
  private long evenness() {
    Map<Integer, Integer> widths = new TreeMap<>();
    for (Line line : lines) {
      if (line.fields().size() > 1) {
        widths.merge(line.fields().size(), 1, Integer::sum);
      }
    }
    long best = 0;
    for (Map.Entry<Integer, Integer> width : widths.entrySet()) {
      long share = 1000L * width.getValue() / lines.size();
      long first = lines.get(0).fields().size() == width.getKey() ? 500 : 0;
      best = Math.max(best, share + first + Math.min(width.getKey(), 100));
    }
    return best;
  }

  /**
   * The sign before the decimals. Figures such as 1,234 and 1.234 say nothing; where none says
   * anything, a table with semicolons is taken for one with decimal commas.
   */
  char decimalSign() {
    long commas = count(WITH_COMMA);
    long points = count(WITH_POINT);
    if (commas == points) {
      return delimiter == ';' ? ',' : '.';
    }
    return commas > points ? ',' : '.';
  }

  private long count(Pattern pattern) {
    return lines.stream()
        .flatMap(line -> line.fields().stream())
        .filter(field -> pattern.matcher(field.text()).matches())
        .count();
  }
}
