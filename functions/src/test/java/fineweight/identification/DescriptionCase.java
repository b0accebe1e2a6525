package fineweight.identification;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A description written by hand from trade knowledge, and the answer it must get.
 *
 * @param pieces how many; empty text if that must stay open, or if only a face value is said
 * @param answer {@code one} (precious metal), {@code base} (none), {@code ask}, {@code none}
 * @param standards those that the coin may be of
 * @param alsoOk further answers that pass: {@code one base ask none}, {@code flagged} (a figure
 *     with a warning), {@code pieces} (the count left open)
 */
record DescriptionCase(
    int line,
    String text,
    String pieces,
    String answer,
    List<String> standards,
    String why,
    Set<String> alsoOk) {

  static List<DescriptionCase> all() {
    InputStream bytes =
        DescriptionCase.class.getResourceAsStream("/fineweight/clue/descriptions.csv");
    List<DescriptionCase> cases = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder()
            .ofNamedCsvRecord(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      rows.forEach(row -> cases.add(of(row)));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return cases;
  }

  private static DescriptionCase of(NamedCsvRecord row) {
    return new DescriptionCase(
        (int) row.getStartingLineNumber(),
        row.getField("text"),
        row.getField("pieces").strip(),
        row.getField("answer").strip(),
        words(row.getField("standards")),
        row.getField("why"),
        Set.copyOf(words(row.getField("also_ok"))));
  }

  private static List<String> words(String text) {
    return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+"));
  }

  boolean passes(String kind) {
    return answer.equals(kind) || alsoOk.contains(kind);
  }
}
