package fineweight.typeset;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.grade.Condition;
import fineweight.grade.Grade;
import fineweight.standard.CoinStandard;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Collections small enough that the right proposal was written beside each row by hand, from what a
 * dealer at a table would say; common practice, no source.
 */
class KeepOrSellTest {
  /** The supplied set, a list as a collector writes it, and every date and mint of one coin. */
  private static final Map<String, TypeSet> SETS =
      Map.of(
          "",
          TypeSet.unitedStates(),
          "own",
          TypeSetFile.read(
              "mine",
              "mine.csv",
              new StringReader(
                  """
                  key,name,country,denomination,standards,years,mints
                  cc,Carson City,US,dollar,us-dollar-1878-1921-morgan,1878-1893,CC
                  y21,of 1921,US,dollar,,1921,
                  """)),
          "dates",
          DateAndMintSet.of("Morgan by date and mint", List.of(Coins.MORGAN), 2026));

  @TestFactory
  Stream<DynamicTest> everyRowGetsTheProposalThatWasWrittenForIt() throws IOException {
    return cases().entrySet().stream()
        .map(one -> DynamicTest.dynamicTest("case " + one.getKey(), () -> check(one.getValue())));
  }

  @Test
  void thereAreManyCasesOfEveryKind() throws IOException {
    assertThat(cases()).hasSize(70);
    for (String set : SETS.keySet()) {
      assertThat(cases().values().stream().filter(rows -> set(rows).equals(set)).count())
          .as(set)
          .isGreaterThanOrEqualTo(5);
    }
  }

  private static String set(List<NamedCsvRecord> rows) {
    return rows.get(0).getField("set");
  }

  private static Map<String, List<NamedCsvRecord>> cases() throws IOException {
    Map<String, List<NamedCsvRecord>> cases = new LinkedHashMap<>();
    try (Reader text =
            new InputStreamReader(
                KeepOrSellTest.class.getResourceAsStream("keep-or-sell.csv"),
                StandardCharsets.UTF_8);
        CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text)) {
      rows.forEach(
          row -> cases.computeIfAbsent(row.getField("case"), key -> new ArrayList<>()).add(row));
    }
    return cases;
  }

  private static void check(List<NamedCsvRecord> rows) {
    SetReview review =
        SetReview.of(SETS.get(set(rows)), rows.stream().map(KeepOrSellTest::piece).toList());
    for (int i = 0; i < rows.size(); i++) {
      Standing standing = review.standings().get(i);
      String why = rows.get(i).getField("row") + ": " + rows.get(i).getField("why");
      assertThat(standing.status().words()).as(why).isEqualTo(rows.get(i).getField("status"));
      assertThat(standing.proposal()).as(why).isEqualTo(rows.get(i).getField("proposal"));
    }
  }

  private static CollectedPiece piece(NamedCsvRecord row) {
    Condition condition =
        new Condition(
            Grade.read(row.getField("grade")),
            row.getField("certified").equals("yes"),
            row.getField("damaged").equals("yes"));
    String ruling = row.getField("ruling");
    return new CollectedPiece(
        row.getField("row"),
        standards(row.getField("place")),
        row.getField("year").isEmpty()
            ? OptionalInt.empty()
            : OptionalInt.of(Integer.parseInt(row.getField("year"))),
        Optional.of(row.getField("mint")).filter(mint -> !mint.equals("?")),
        Optional.of(row.getField("named")).filter(name -> !name.isEmpty()),
        condition,
        Integer.parseInt(row.getField("count")),
        ruling.isEmpty()
            ? Optional.empty()
            : Optional.of(CollectedPiece.Ruling.valueOf(ruling.toUpperCase(Locale.ROOT))));
  }

  private static List<CoinStandard> standards(String place) {
    return switch (place) {
      case "morgan" -> List.of(Coins.MORGAN);
      case "peace" -> List.of(Coins.PEACE);
      case "draped", "flowing or draped" -> List.of(Coins.EARLY_DOLLAR);
      case "medal" -> List.of(Coins.MEDAL);
      case "either dollar" -> List.of(Coins.MORGAN, Coins.PEACE);
      default -> throw new IllegalArgumentException(place);
    };
  }
}
