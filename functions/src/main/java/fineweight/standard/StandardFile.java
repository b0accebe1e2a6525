package fineweight.standard;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CsvRecordHandler;
import fineweight.metal.Composition;
import fineweight.quantity.Mass;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads a catalogue file: a CSV with one standard a row. A bad row stops the reading and is named
 * by its place.
 */
public final class StandardFile {
  static final List<String> COLUMNS =
      List.of(
          "id",
          "country",
          "denomination",
          "face_value",
          "currency",
          "type_name",
          "years",
          "mints",
          "variant",
          "only_if",
          "tells",
          "composition",
          "mass_g",
          "mass_grains",
          "fine_mass_g",
          "diameter_mm",
          "thickness_mm",
          "magnetic",
          "source",
          "locator",
          "certainty",
          "note");

  private final String name;
  private Map<String, Integer> places = Map.of();

  private StandardFile(String name) {
    this.name = name;
  }

  /**
   * @param name the file's name, for messages
   * @param text the file's text, read to its end and not closed
   * @throws StandardFileException at the first row that cannot be used
   */
  public static List<CoinStandard> read(String name, Reader text) {
    return new StandardFile(name).readAll(text);
  }

  private List<CoinStandard> readAll(Reader text) {
    List<CoinStandard> standards = new ArrayList<>();
    try (CsvReader<CsvRecord> rows = CsvReader.builder().build(CsvRecordHandler.of(), text)) {
      for (CsvRecord row : rows) {
        if (places.isEmpty()) {
          readHeader(row);
        } else if (!(row.getFieldCount() == 1 && row.getField(0).isBlank())) {
          standards.add(readRow(row));
        }
      }
    } catch (CsvParseException broken) {
      throw new StandardFileException(name, 0, "-", broken.getMessage());
    } catch (IOException failed) {
      throw new UncheckedIOException("cannot read " + name, failed);
    }
    if (places.isEmpty()) {
      throw new StandardFileException(
          name, 1, "-", "the file is empty; expected the header " + String.join(",", COLUMNS));
    }
    return standards;
  }

  private void readHeader(CsvRecord row) {
    Map<String, Integer> found = new HashMap<>();
    for (int i = 0; i < row.getFieldCount(); i++) {
      found.put(row.getField(i).strip(), i);
    }
    for (String column : COLUMNS) {
      if (!found.containsKey(column)) {
        throw new StandardFileException(
            name, row.getStartingLineNumber(), column, "this column is missing");
      }
    }
    places = found;
  }

  private CoinStandard readRow(CsvRecord row) {
    if (row.getFieldCount() < places.size()) {
      throw new StandardFileException(
          name,
          row.getStartingLineNumber(),
          COLUMNS.get(Math.min(row.getFieldCount(), COLUMNS.size() - 1)),
          "the row has " + row.getFieldCount() + " fields, the header " + places.size());
    }
    Optional<Mass> grams = optional(row, "mass_g", Mass::ofGrams);
    Optional<Mass> grains =
        optional(row, "mass_grains", value -> Mass.ofGrains(new BigDecimal(value)));
    checkAgreement(row, grams, grains);
    Issue issue =
        new Issue(
            field(row, "country", StandardFile::needed),
            field(row, "denomination", value -> list(needed(value))),
            optional(row, "face_value", BigDecimal::new),
            text(row, "currency"),
            list(text(row, "type_name")),
            field(row, "years", Years::parse),
            field(row, "mints", Mints::parse));
    Distinction distinction =
        new Distinction(
            text(row, "variant"),
            field(row, "only_if", Tell::parseAll),
            field(row, "tells", Tell::parseAll));
    Composition composition = field(row, "composition", Composition::parse);
    Optional<Mass> fine = optional(row, "fine_mass_g", Mass::ofGrams);
    Optional<Mass> gross = grains.isPresent() ? grains : grams;
    Optional<BigDecimal> diameter = optional(row, "diameter_mm", BigDecimal::new);
    Optional<BigDecimal> thickness = optional(row, "thickness_mm", BigDecimal::new);
    Optional<Boolean> magnetic = optional(row, "magnetic", StandardFile::yesOrNo);
    Specification specification =
        field(
            row,
            "fine_mass_g",
            ignored -> new Specification(composition, gross, fine, diameter, thickness, magnetic));
    Evidence evidence =
        new Evidence(
            list(text(row, "source")),
            text(row, "locator"),
            field(row, "certainty", Certainty::ofCode),
            text(row, "note"));
    if (evidence.certainty() == Certainty.TWO_SOURCES
        || evidence.certainty() == Certainty.SOURCED) {
      field(row, "source", StandardFile::needed);
    }
    return field(
        row, "id", id -> new CoinStandard(id, issue, distinction, specification, evidence));
  }

  /**
   * Grains are the law's figure, grams the same rounded: they may not differ by more than the
   * rounding.
   */
  private void checkAgreement(CsvRecord row, Optional<Mass> grams, Optional<Mass> grains) {
    if (grams.isPresent() && grains.isPresent()) {
      BigDecimal difference = grams.get().grams().subtract(grains.get().grams()).abs();
      if (difference.compareTo(new BigDecimal("0.006")) > 0) {
        throw new StandardFileException(
            name,
            row.getStartingLineNumber(),
            "mass_grains",
            grains.get() + " by the grains, but " + grams.get() + " by the grams");
      }
    }
  }

  private String text(CsvRecord row, String column) {
    return row.getField(places.get(column)).strip();
  }

  private <T> T field(CsvRecord row, String column, Function<String, T> reading) {
    try {
      return reading.apply(text(row, column));
    } catch (IllegalArgumentException unusable) {
      throw new StandardFileException(name, row.getStartingLineNumber(), column, reason(unusable));
    }
  }

  private static String reason(IllegalArgumentException unusable) {
    return unusable instanceof NumberFormatException ? "no number" : unusable.getMessage();
  }

  private <T> Optional<T> optional(CsvRecord row, String column, Function<String, T> reading) {
    return text(row, column).isEmpty()
        ? Optional.empty()
        : Optional.of(field(row, column, reading));
  }

  private static String needed(String value) {
    if (value.isEmpty()) {
      throw new IllegalArgumentException("a value is needed here");
    }
    return value;
  }

  private static Boolean yesOrNo(String value) {
    return switch (value) {
      case "yes" -> true;
      case "no" -> false;
      default -> throw new IllegalArgumentException("expected yes or no, found \"" + value + "\"");
    };
  }

  private static List<String> list(String text) {
    return Arrays.stream(text.split(";", -1))
        .map(String::strip)
        .filter(piece -> !piece.isEmpty())
        .toList();
  }
}
