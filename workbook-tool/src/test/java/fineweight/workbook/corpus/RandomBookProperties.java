package fineweight.workbook.corpus;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.workbook.oracle.SampleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Whatever the spelling of a workbook, an edit changes nothing but what was asked for. */
class RandomBookProperties {
  @Property(tries = 150)
  void everySpellingIsFilledCleanly(
      @ForAll long seed,
      @ForAll @IntRange(max = 3) int beyond,
      @ForAll @IntRange(max = 9) int header,
      @ForAll @IntRange(min = 1, max = 12) int rows,
      @ForAll boolean sheet)
      throws IOException {
    RandomBook book = new RandomBook(seed);
    byte[] file = book.file();
    Filling filling =
        new Filling("Coins", header, header + 1, header + rows, book.lastColumn() + 1 + beyond);
    RoundTrip.Outcome outcome = run(file, filling, sheet);
    assertThat(outcome.refusal()).isEmpty();
    assertThat(outcome.problems()).isEmpty();
  }

  /** The sample has what no corpus file has: a line break in a prompt. */
  @Example
  void theSampleIsFilledCleanly() throws IOException {
    Filling filling = new Filling("Coins", 0, 1, 3, 8);
    RoundTrip.Outcome outcome = run(SampleBook.zip(SampleBook.before()), filling, false);
    assertThat(outcome.refusal()).isEmpty();
    assertThat(outcome.problems()).isEmpty();
  }

  private static RoundTrip.Outcome run(byte[] bytes, Filling filling, boolean sheet)
      throws IOException {
    Path folder = Files.createTempDirectory("random");
    try {
      Path file = Files.write(folder.resolve("book.xlsx"), bytes);
      return new RoundTrip(Opening.XLSX, file, filling, sheet).run();
    } finally {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      }
    }
  }
}
