package fineweight.column;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.identification.CoinIdentifier;
import fineweight.spot.SpotPrices;
import fineweight.standard.Standards;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

/** One appraiser may be asked by several threads at once. */
class SeveralThreadsTest {
  private static List<List<Field>> lines() throws Exception {
    try (InputStream in = Lexicon.class.getResourceAsStream("/fineweight/clue/descriptions.csv");
        CsvReader<NamedCsvRecord> read =
            CsvReader.builder()
                .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return read.stream()
          .map(row -> List.of(new Field(FieldRole.DESCRIPTION, row.getField("text"))))
          .toList();
    }
  }

  private static Appraiser appraiser() {
    Lexicon lexicon = Lexicon.standard();
    return new Appraiser(
        new ClueReader(lexicon),
        new CoinIdentifier(Standards.catalogue(), lexicon, "US", 2027),
        SpotPrices.of(CurrencyUnit.USD, LocalDate.of(2026, 11, 25), List.of()),
        Standards.catalogue());
  }

  private static List<String> told(Stream<List<Field>> lines, Appraiser appraiser) {
    return lines
        .map(appraiser::appraise)
        .map(found -> found.state() + " " + found.figures().standardId() + " " + found.notes())
        .toList();
  }

  @Test
  void findTheSameAsOne() throws Exception {
    List<List<Field>> lines = lines();
    List<String> alone = told(lines.stream(), appraiser());
    Appraiser shared = appraiser();
    for (int i = 0; i < 3; i++) {
      assertThat(told(lines.parallelStream(), shared)).isEqualTo(alone);
    }
    assertThat(alone).hasSizeGreaterThan(1_000).anyMatch(line -> line.startsWith("VALUED"));
  }
}
