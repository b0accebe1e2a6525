package fineweight.column;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.clue.word.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The words that collectors put over their columns, and what they mean. Immutable; loaded on first
 * use.
 */
public final class Headings {
  private final Map<String, InputColumn> whole = new LinkedHashMap<>();
  private final List<Part> parts = new ArrayList<>();

  private record Part(String words, InputColumn column) {}

  /**
   * A heading understood.
   *
   * @param exact whether the whole heading is in the list, and not only a word of it
   */
  public record Match(InputColumn column, boolean exact) {}

  private Headings() {}

  public static Headings standard() {
    return Loaded.HEADINGS;
  }

  /** Read on first use, once. */
  private static final class Loaded {
    static final Headings HEADINGS = load();
  }

  private static Headings load() {
    Headings headings = new Headings();
    InputStream bytes = Headings.class.getResourceAsStream("headers.csv");
    if (bytes == null) {
      throw new IllegalStateException("the list of headings is missing from the program");
    }
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder()
            .ofNamedCsvRecord(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      rows.forEach(headings::add);
    } catch (IOException failed) {
      throw new UncheckedIOException("cannot read the list of headings", failed);
    }
    return headings;
  }

  private void add(NamedCsvRecord row) {
    InputColumn column = InputColumn.valueOf(row.getField("column"));
    for (String phrase : row.getField("whole").split(";")) {
      if (!normal(phrase).isEmpty()) {
        whole.putIfAbsent(normal(phrase), column);
      }
    }
    for (String phrase : row.getField("words").split(";")) {
      if (!normal(phrase).isEmpty()) {
        parts.add(new Part(" " + normal(phrase) + " ", column));
      }
    }
  }

  /** The heading in comparable form: units in brackets do not count, and # is "no". */
  private static String normal(String heading) {
    String bare = heading.replaceAll("\\([^)]*\\)|\\[[^\\]]*\\]", " ").replace("#", " no ");
    return Words.normal(bare.replaceAll("[_/?%+]", " "));
  }

  /** The whole headings that mean a column, as the list has them. */
  List<String> of(InputColumn column) {
    return whole.entrySet().stream()
        .filter(entry -> entry.getValue() == column)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** What a heading means; empty if it is not understood. */
  public Optional<Match> match(String heading) {
    String normal = normal(heading);
    if (normal.isEmpty()) {
      return Optional.empty();
    }
    InputColumn exact = whole.get(normal);
    if (exact != null) {
      return Optional.of(new Match(exact, true));
    }
    String padded = " " + normal + " ";
    Part longest = null;
    for (Part part : parts) {
      if (padded.contains(part.words())
          && (longest == null || part.words().length() > longest.words().length())) {
        longest = part;
      }
    }
    boolean isHeading = longest != null && normal.split(" ").length <= 6;
    return isHeading ? Optional.of(new Match(longest.column(), false)) : Optional.empty();
  }
}
