package fineweight.clue.lexicon;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Reads the lexicon's resource files. */
final class LexiconRows {
  private LexiconRows() {}

  static List<NamedCsvRecord> of(String file) {
    List<NamedCsvRecord> rows = new ArrayList<>();
    InputStream bytes = LexiconRows.class.getResourceAsStream("/fineweight/clue/" + file);
    if (bytes == null) {
      throw new IllegalStateException("the word list " + file + " is missing from the program");
    }
    try (CsvReader<NamedCsvRecord> csv =
        CsvReader.builder()
            .ofNamedCsvRecord(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      csv.forEach(rows::add);
    } catch (IOException failed) {
      throw new UncheckedIOException("cannot read the word list " + file, failed);
    }
    return rows;
  }

  static List<String> list(String text, String separator) {
    return Arrays.stream(text.split(java.util.regex.Pattern.quote(separator), -1))
        .map(String::strip)
        .filter(piece -> !piece.isEmpty())
        .toList();
  }
}
