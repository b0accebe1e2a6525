package fineweight.tool.judge;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One line of a table of answers.
 *
 * @param row from 1
 * @param text the row's cells
 * @param answer one, base, ask, none or skip
 * @param pieces coins in the row; empty if there are none to count
 * @param ounces the possible fine troy ounces by ISO 4217 code, in the order of the standards
 * @param melt the least melt of the row
 * @param alsoOk further answers that pass
 */
public record KeyRow(
    int row,
    String text,
    String answer,
    Optional<BigDecimal> pieces,
    Map<String, List<BigDecimal>> ounces,
    Optional<BigDecimal> melt,
    List<String> alsoOk) {

  public static List<KeyRow> read(Path file) throws IOException {
    List<KeyRow> rows = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> records = CsvReader.builder().ofNamedCsvRecord(file)) {
      records.forEach(record -> rows.add(of(record)));
    }
    return rows;
  }

  private static KeyRow of(NamedCsvRecord line) {
    Map<String, List<BigDecimal>> ounces = new TreeMap<>();
    for (String code : FilledRow.OUNCES.keySet()) {
      String figures = line.getField(code.toLowerCase(java.util.Locale.ROOT) + "_ozt");
      ounces.put(
          code,
          Arrays.stream(figures.split("\\|"))
              .map(each -> number(each).orElse(BigDecimal.ZERO))
              .toList());
    }
    return new KeyRow(
        Integer.parseInt(line.getField("row")),
        line.getField("text"),
        line.getField("answer"),
        number(line.getField("pieces")),
        ounces,
        number(line.getField("melt_low_usd")),
        List.of(line.getField("also_ok").split(" ")));
  }

  private static Optional<BigDecimal> number(String text) {
    return text.isBlank() ? Optional.empty() : Optional.of(new BigDecimal(text));
  }

  /** Whether this other answer passes too. */
  boolean passesAs(String other) {
    return alsoOk.contains(other);
  }

  /** The figures that pass for a metal: the expected ones and those that pass too. */
  List<BigDecimal> accepted(String code) {
    List<BigDecimal> accepted = new ArrayList<>(ounces.get(code));
    for (String words : alsoOk) {
      Matcher figure = Pattern.compile(code + "([+=])([0-9.]+)").matcher(words);
      if (figure.matches()) {
        BigDecimal number = new BigDecimal(figure.group(2));
        accepted.add(figure.group(1).equals("=") ? number : ounces.get(code).get(0).add(number));
      }
    }
    return accepted;
  }

  /** Whether the melt of the key is only one of several that pass. */
  boolean hasOtherFigures() {
    return alsoOk.stream().anyMatch(words -> words.matches("X[A-Z]{2}[+=].*"));
  }
}
