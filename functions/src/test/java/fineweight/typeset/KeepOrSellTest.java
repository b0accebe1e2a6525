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

/** Forty collections, small enough that the right proposal was written beside each row by hand. */
class KeepOrSellTest {
  private static final TypeSet SET = TypeSet.unitedStates();

  @TestFactory
  Stream<DynamicTest> everyRowGetsTheProposalThatWasWrittenForIt() throws IOException {
    return cases().entrySet().stream()
        .map(one -> DynamicTest.dynamicTest("case " + one.getKey(), () -> check(one.getValue())));
  }

  @Test
  void thereAreFortyCases() throws IOException {
    assertThat(cases()).hasSize(40);
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
    SetReview review = SetReview.of(SET, rows.stream().map(KeepOrSellTest::piece).toList());
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
        List.of(standard(row.getField("place"))),
        OptionalInt.of(Integer.parseInt(row.getField("year"))),
        Optional.of(row.getField("mint")),
        Optional.empty(),
        condition,
        Integer.parseInt(row.getField("count")),
        ruling.isEmpty()
            ? Optional.empty()
            : Optional.of(CollectedPiece.Ruling.valueOf(ruling.toUpperCase(Locale.ROOT))));
  }

  private static CoinStandard standard(String place) {
    return switch (place) {
      case "morgan" -> Coins.MORGAN;
      case "peace" -> Coins.PEACE;
      case "draped", "flowing or draped" -> Coins.EARLY_DOLLAR;
      case "medal" -> Coins.MEDAL;
      default -> throw new IllegalArgumentException(place);
    };
  }
}
