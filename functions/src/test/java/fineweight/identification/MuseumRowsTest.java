package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.standard.CoinStandard;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Catalogue records as museums word them, and masses that others weighed. */
class MuseumRowsTest {
  @Test
  void nothingIsGuessedForAncientCoins() throws IOException {
    for (NamedCsvRecord row : MuseumRows.of("museum-coins.csv")) {
      String date = row.getField("date_text");
      if (date.contains("B.C.") || date.contains("A.D.")) {
        Answered got = Answered.to(MuseumRows.fields(row));
        assertThat(got.kind()).as(row.getField("title") + ": " + got.said()).isEqualTo("none");
      }
    }
  }

  @Test
  void noRecordGetsAnotherStandardsMetal() throws IOException {
    List<String> wrong = new ArrayList<>();
    int right = 0;
    for (NamedCsvRecord row : MuseumRows.of("museum-coins.csv")) {
      MuseumRows.Outcome outcome = MuseumRows.judge(row);
      right += outcome == MuseumRows.Outcome.RIGHT ? 1 : 0;
      if (outcome == MuseumRows.Outcome.WRONG) {
        wrong.add(row.getField("title") + ": " + Answered.to(MuseumRows.fields(row)).said());
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(right).isGreaterThanOrEqualTo(65);
  }

  @Test
  void measuredDimesAreTheCoinsOfTheirDate() throws IOException {
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
      assertThat(got.standards().stream().map(CoinStandard::id))
          .as(row.getField("row_id") + ": " + got.said())
          .containsExactly("us-dime-1965-2026-clad");
      differences.add(new BigDecimal(measured).subtract(new BigDecimal("2.268")));
      flagged += got.isFlagged() ? 1 : 0;
    }
    differences.sort(BigDecimal::compareTo);
    BigDecimal sum = differences.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    System.out.println(
        "measured dimes: "
            + differences.size()
            + ", against 2.268 g: least "
            + differences.get(0)
            + ", middle "
            + differences.get(differences.size() / 2)
            + ", most "
            + differences.get(differences.size() - 1)
            + ", mean "
            + sum.divide(BigDecimal.valueOf(differences.size()), 4, RoundingMode.HALF_UP)
            + ", flagged "
            + flagged);
    assertThat(flagged).isZero();
  }

  @Test
  void coinsFromAChangeBinHoldNoPreciousMetal() throws IOException {
    for (NamedCsvRecord row : MuseumRows.of("change-bin.csv")) {
      Answered got =
          Answered.to(
              List.of(
                  new Field(FieldRole.COUNTRY, "USA"),
                  new Field(FieldRole.DENOMINATION, row.getField("coin")),
                  new Field(FieldRole.YEAR, row.getField("year"))));
      // No quarter bears the date 1975: that row is an error of its owner.
      boolean noSuch =
          row.getField("coin").equals("quarter") && row.getField("year").equals("1975");
      assertThat(got.kind())
          .as(row.getField("row_id") + ": " + got.said())
          .isEqualTo(noSuch ? "none" : "base");
    }
  }
}
