package fineweight.workbook.csv;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.WorkbookRefusal;
import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class LineReaderProperties {
  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.strings()
        .withChars('a', '1', ',', ',', '"', '"', ' ', '\n', '\r', '\u20ac')
        .ofMaxLength(40);
  }

  @Provide
  Arbitrary<List<List<String>>> tables() {
    return texts().filter(text -> !text.isEmpty()).list().ofSize(3).list().ofMaxSize(20);
  }

  private static List<Line> read(String text) throws IOException, WorkbookRefusal {
    return read(new StringReader(text));
  }

  private static List<Line> read(Reader text) throws IOException, WorkbookRefusal {
    List<Line> lines = new ArrayList<>();
    try (LineReader reader = new LineReader("any.csv", text, ',')) {
      for (Line line = reader.next(); line != null; line = reader.next()) {
        lines.add(line);
      }
    }
    return lines;
  }

  private static String join(List<Line> lines) {
    return lines.stream()
        .map(
            line ->
                line.fields().stream().map(Field::raw).collect(Collectors.joining(","))
                    + line.end())
        .collect(Collectors.joining());
  }

  @Property(tries = 20_000)
  void losesNothingOfATextThatItTakes(@ForAll("texts") String text) throws IOException {
    List<Line> lines;
    try {
      lines = read(text);
    } catch (WorkbookRefusal refused) {
      assertThat(text).contains("\"");
      return;
    }
    assertThat(join(lines)).isEqualTo(text);
  }

  /** Text that arrives in pieces of any length is cut as if it came at once. */
  @Property
  void doesNotMindWhereTheTextIsBroken(
      @ForAll("tables") List<List<String>> table, @ForAll @IntRange(min = 1, max = 7) int piece)
      throws IOException, WorkbookRefusal {
    String text = quoted(table);

    assertThat(read(new InPieces(text, piece))).isEqualTo(read(text));
  }

  /** Gives few characters at a time. */
  private static final class InPieces extends FilterReader {
    private final int piece;

    InPieces(String text, int piece) {
      super(new StringReader(text));
      this.piece = piece;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
      return super.read(buffer, offset, Math.min(length, piece));
    }
  }

  private static String quoted(List<List<String>> table) {
    return table.stream()
        .map(
            row ->
                row.stream()
                    .map(one -> Field.quoted(one).raw())
                    .collect(Collectors.joining(",", "", "\r\n")))
        .collect(Collectors.joining());
  }

  @Property
  void readsWhatAProperlyQuotedTableMeans(@ForAll("tables") List<List<String>> table)
      throws IOException, WorkbookRefusal {
    assertThat(read(quoted(table)))
        .extracting(line -> line.fields().stream().map(Field::text).toList())
        .isEqualTo(table);
  }
}
