package fineweight.valuation;

import static fineweight.valuation.Samples.usd;
import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.Metal;
import java.math.BigDecimal;
import org.joda.money.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Melt and worth of silver pieces at many spot prices, wears and payouts. The figures were worked
 * out apart, in exact fractions by a script in another language: count x grams x (1 - wear) /
 * 31.1034768 (NIST Handbook 44, Appendix C) x spot, rounded half up at the end; worth is the higher
 * of the payout and the face. The spot prices and payouts are invented.
 */
class WorthTableTest {
  @ParameterizedTest
  @CsvSource({
    "2.25, 20, 0, percent, 100, 30, 0.10, 43.40, 43.40, METAL",
    "5.625, 3, 1.16, percent, 92.5, 1.25, 0.25, 0.67, 0.75, FACE",
    "11.25, 40, 3, percent, 103, 4.60, 0.50, 64.56, 66.49, METAL",
    "4.6, 1, 8.5, piece, 0.35, 58.115, 0.50, 7.86, 8.21, METAL",
    "24.05658075, 2, 1.16, ounce, -40, 30, 1, 45.87, 2.00, FACE",
    "1.75, 2, 3, percent, 100, 1.25, 0.05, 0.14, 0.14, METAL",
    "0, 20, 8.5, percent, 103, 4.60, 0.25, 0.00, 5.00, FACE",
    "2.25, 1, 0, ounce, -1.20, 30, 0.10, 2.17, 2.08, METAL",
    "5.625, 7, 3, piece, 0.35, 1.25, 0.25, 1.53, 3.98, METAL",
    "11.25, 1, 8.5, percent, 100, 4.60, 0.50, 1.52, 1.52, METAL",
    "4.6, 2, 0, percent, 92.5, 58.115, 0.50, 17.19, 15.90, METAL",
    "24.05658075, 40, 1.16, percent, 103, 30, 1, 917.36, 944.88, METAL",
    "1.75, 40, 8.5, piece, 0.35, 1.25, 0.05, 2.57, 16.57, METAL",
    "0, 2, 0, ounce, -40, 4.60, 0.25, 0.00, 0.50, FACE",
    "2.25, 7, 1.16, percent, 100, 30, 0.10, 15.02, 15.02, METAL",
    "5.625, 2, 3, percent, 103, 1.25, 0.25, 0.44, 0.50, FACE",
    "11.25, 40, 0, ounce, -1.20, 4.60, 0.50, 66.55, 49.19, METAL",
    "4.6, 1, 1.16, piece, 0.35, 58.115, 0.50, 8.50, 8.85, METAL",
    "24.05658075, 2, 3, percent, 100, 30, 1, 45.01, 45.01, METAL",
    "1.75, 7, 8.5, percent, 92.5, 1.25, 0.05, 0.45, 0.42, METAL",
    "0, 1, 1.16, percent, 103, 4.60, 0.25, 0.00, 0.25, FACE",
    "2.25, 40, 3, piece, 0.35, 30, 0.10, 84.20, 98.20, METAL",
    "5.625, 1, 8.5, ounce, -40, 1.25, 0.25, 0.21, 0.25, FACE",
    "11.25, 7, 0, percent, 100, 4.60, 0.50, 11.65, 11.65, METAL",
    "4.6, 1, 3, percent, 103, 58.115, 0.50, 8.34, 8.59, METAL",
    "24.05658075, 3, 8.5, ounce, -1.20, 30, 1, 63.69, 61.14, METAL",
    "1.75, 10, 0, piece, 0.35, 1.25, 0.05, 0.70, 4.20, METAL",
    "0, 40, 1.16, percent, 100, 4.60, 0.25, 0.00, 10.00, FACE",
    "2.25, 3, 8.5, percent, 92.5, 30, 0.10, 5.96, 5.51, METAL",
    "5.625, 2, 0, percent, 103, 1.25, 0.25, 0.45, 0.50, FACE",
    "11.25, 10, 1.16, piece, 0.35, 4.60, 0.50, 16.45, 19.95, METAL",
    "4.6, 3, 3, ounce, -40, 58.115, 0.50, 25.01, 7.80, METAL",
    "24.05658075, 2, 0, percent, 100, 30, 1, 46.41, 46.41, METAL",
    "1.75, 7, 1.16, percent, 103, 1.25, 0.05, 0.49, 0.50, METAL",
    "0, 20, 3, ounce, -1.20, 4.60, 0.25, 0.00, 5.00, FACE",
    "2.25, 2, 8.5, piece, 0.35, 30, 0.10, 3.97, 4.67, METAL",
    "5.625, 2, 1.16, percent, 100, 1.25, 0.25, 0.45, 0.50, FACE",
    "11.25, 1, 3, percent, 92.5, 4.60, 0.50, 1.61, 1.49, METAL",
    "4.6, 7, 8.5, percent, 103, 58.115, 0.50, 55.05, 56.70, METAL",
    "24.05658075, 250, 0, piece, 0.35, 30, 1, 5800.78, 5888.28, METAL",
    "1.75, 40, 3, ounce, -40, 1.25, 0.05, 2.73, 2.00, FACE",
    "0, 20, 8.5, percent, 100, 4.60, 0.25, 0.00, 5.00, FACE",
    "2.25, 250, 0, percent, 103, 30, 0.10, 542.54, 558.82, METAL",
    "5.625, 250, 1.16, ounce, -1.20, 1.25, 0.25, 55.86, 62.50, FACE",
    "11.25, 20, 8.5, piece, 0.35, 4.60, 0.50, 30.45, 37.45, METAL",
    "4.6, 10, 0, percent, 100, 58.115, 0.50, 85.95, 85.95, METAL",
    "24.05658075, 7, 1.16, percent, 92.5, 30, 1, 160.54, 148.50, METAL",
    "1.75, 3, 3, percent, 103, 1.25, 0.05, 0.20, 0.21, METAL",
  })
  void agreesWithTheFiguresWorkedOutApart(
      String grams,
      int count,
      BigDecimal wear,
      String kind,
      String payout,
      String spot,
      String face,
      String melt,
      String worth,
      Basis basis) {
    Piece piece =
        Piece.of(Samples.silver(grams))
            .times(count)
            .worn(new Wear.Percentage(wear))
            .withFace(usd(face));
    Payouts payouts = Payouts.atMelt().with(Metal.SILVER, payout(kind, payout));
    Valuation valuation =
        new Valuer(Samples.spots(spot, "2500"), payouts, DamageRule.LOWERS_TO_METAL).value(piece);

    assertThat(fineweight.money.Amounts.atCell(valuation.melt()))
        .isEqualTo(Money.parse("USD " + melt));
    assertThat(valuation.worth().atCell()).isEqualTo(Money.parse("USD " + worth));
    assertThat(valuation.worth().basis()).isEqualTo(basis);
  }

  private static Payout payout(String kind, String figure) {
    return switch (kind) {
      case "percent" -> Payout.percent(figure);
      case "ounce" -> new Payout.PerOunce(usd(figure));
      case "piece" -> new Payout.PerPiece(usd(figure));
      default -> throw new IllegalArgumentException(kind);
    };
  }
}
