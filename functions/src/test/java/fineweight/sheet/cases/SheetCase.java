package fineweight.sheet.cases;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One call of a function and what must come back.
 *
 * @param line in the table, from 1
 * @param function its name
 * @param written the arguments as written in the table
 * @param expected what must come back
 */
public record SheetCase(long line, String function, String written, Expected expected) {
  private static final String TABLE = "/fineweight/sheet/cases.csv";

  /** The whole table. */
  public static List<SheetCase> all() {
    List<SheetCase> cases = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder()
            .ofNamedCsvRecord(
                new InputStreamReader(
                    Objects.requireNonNull(SheetCase.class.getResourceAsStream(TABLE), TABLE),
                    StandardCharsets.UTF_8))) {
      for (NamedCsvRecord row : rows) {
        cases.add(
            new SheetCase(
                row.getStartingLineNumber(),
                row.getField("function"),
                row.getField("arguments"),
                Expected.read(row.getField("expected"))));
      }
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return cases;
  }

  public List<CaseArgument> arguments() {
    return ArgumentText.read(written);
  }

  @Override
  public String toString() {
    return "line " + line + ", " + function + "(" + written + ")";
  }
}
