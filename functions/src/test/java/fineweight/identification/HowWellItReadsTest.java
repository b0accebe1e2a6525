package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The figures of docs/how-well-it-reads.md are those that come out today. */
class HowWellItReadsTest {
  private static String page = "";

  @BeforeAll
  static void readPage() throws IOException {
    Path path = Path.of(System.getProperty("fineweight.root"), "docs", "how-well-it-reads.md");
    page = Files.readString(path);
  }

  @Test
  void linesWrittenByHand() {
    Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
    List<DescriptionCase> cases = DescriptionCase.all();
    cases.forEach(
        line -> counts.merge(Verdict.of(line, Answered.to(line.text())), 1, Integer::sum));
    int right = counts.getOrDefault(Verdict.RIGHT, 0);
    int wrong = counts.getOrDefault(Verdict.WRONG, 0);
    says("written by hand", cases.size(), right, cases.size() - right - wrong, wrong);
  }

  @Test
  void museumRecords() throws IOException {
    Map<MuseumRows.Outcome, Integer> all = new EnumMap<>(MuseumRows.Outcome.class);
    Map<MuseumRows.Outcome, Integer> ancient = new EnumMap<>(MuseumRows.Outcome.class);
    List<BigDecimal> differences = new ArrayList<>();
    List<NamedCsvRecord> rows = MuseumRows.of("museum-coins.csv");
    int flagged = 0;
    int modern = 0;
    for (NamedCsvRecord row : rows) {
      (MuseumRows.isAncient(row) ? ancient : all).merge(MuseumRows.judge(row), 1, Integer::sum);
      if (!MuseumRows.isAncient(row)) {
        Answered got = Answered.to(MuseumRows.fields(row));
        modern++;
        flagged += got.isFlagged() ? 1 : 0;
        addDifference(got, row.getField("weight_g_read"), differences);
      }
    }
    says("museum records of struck coins with a date", modern, all);
    says("museum records of ancient coins", rows.size() - modern, ancient);
    assertThat(page).contains("| museum records | " + distribution(differences) + " |");
    assertThat(page).contains("**" + flagged + " of " + modern + "**");
  }

  @Test
  void dimesOnTheScale() throws IOException {
    List<BigDecimal> differences = new ArrayList<>();
    int flagged = 0;
    for (NamedCsvRecord row : MuseumRows.of("measured-dimes.csv")) {
      String measured = row.getField("weight_g_measured");
      Answered got =
          Answered.to(
              List.of(
                  new Field(FieldRole.DESCRIPTION, row.getField("coin")),
                  new Field(FieldRole.YEAR, row.getField("year")),
                  new Field(FieldRole.MASS, measured)));
      flagged += got.isFlagged() ? 1 : 0;
      addDifference(got, measured, differences);
    }
    assertThat(page).contains("| weighed dimes | " + distribution(differences) + " |");
    assertThat(page).contains("**" + flagged + " of " + differences.size() + "**");
  }

  private static void addDifference(Answered got, String measured, List<BigDecimal> differences) {
    if (!measured.isBlank() && got.standards().size() == 1) {
      got.standards()
          .get(0)
          .specification()
          .grossMass()
          .ifPresent(mass -> differences.add(new BigDecimal(measured).subtract(mass.grams())));
    }
  }

  /** How many, least, middle, most, mean: measured minus standard, in grams. */
  private static String distribution(List<BigDecimal> differences) {
    List<BigDecimal> sorted = differences.stream().sorted().toList();
    BigDecimal mean =
        sorted.stream()
            .reduce(BigDecimal.ZERO, BigDecimal::add)
            .divide(BigDecimal.valueOf(sorted.size()), 6, RoundingMode.HALF_UP);
    return sorted.size()
        + " | "
        + grams(sorted.get(0))
        + " | "
        + grams(sorted.get(sorted.size() / 2))
        + " | "
        + grams(sorted.get(sorted.size() - 1))
        + " | "
        + grams(mean);
  }

  private static String grams(BigDecimal value) {
    return String.format(Locale.ROOT, "%+.3f", value);
  }

  private static void says(String what, int lines, Map<MuseumRows.Outcome, Integer> counts) {
    says(
        what,
        lines,
        counts.getOrDefault(MuseumRows.Outcome.RIGHT, 0),
        counts.getOrDefault(MuseumRows.Outcome.ASKED, 0),
        counts.getOrDefault(MuseumRows.Outcome.WRONG, 0));
  }

  private static void says(String what, int lines, int right, int asked, int wrong) {
    assertThat(page)
        .contains(
            "| " + what + " | " + lines + " | " + right + " | " + asked + " | " + wrong + " |");
  }
}
