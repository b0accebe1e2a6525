package fineweight.tool;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.tool.judge.FilledRow;
import fineweight.tool.judge.FilledTable;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the command says of United States coins against the laws themselves. The figures were typed
 * from memory of the law named beside them, not with its text open, and not from our catalogue;
 * they are turned into troy ounces here, with the grain of NIST Handbook 44, Appendix C (1 grain =
 * 64.798 91 mg, 1 troy ounce = 480 grains).
 */
class CoreFactsTest {
  private static final BigDecimal GRAMS_PER_OUNCE = new BigDecimal("31.1034768");
  private static final BigDecimal GRAINS_PER_OUNCE = new BigDecimal(480);

  @TempDir Path folder;

  private FilledRow refreshed(int year, String denomination, int count, String... more)
      throws IOException {
    Path file = Book.ofCoins(year, denomination, count, 1).save(folder.resolve("coin.xlsx"));
    CommandRun run = CommandRun.refresh(file, more);
    assertThat(run.code()).as(run.err()).isZero();
    return FilledTable.ofWorkbook(file, "Coins", 1).row(2);
  }

  /** Pure metal in grains, as the acts of 1792 state it. */
  @ParameterizedTest
  @CsvSource({
    // Act of April 2, 1792 (1 Stat. 246), section 9
    "1795, Flowing Hair dollar, XAG, 371.25",
    "1803, Draped Bust half dollar, XAG, 185.625",
    "1803, Draped Bust dime, XAG, 37.125",
    "1799, Capped Bust eagle, XAU, 247.5",
    "1803, Capped Bust half eagle, XAU, 123.75"
  })
  void pureGrainsOf1792(int year, String coin, String metal, BigDecimal grains) throws IOException {
    agrees(refreshed(year, coin, 1), metal, grains.divide(GRAINS_PER_OUNCE, MathContext.DECIMAL64));
  }

  /** Whole weight in grains and nine parts in ten of pure metal. */
  @ParameterizedTest
  @CsvSource({
    // Act of January 18, 1837 (5 Stat. 136), sections 8 to 10
    "1841, Seated Liberty dollar, XAG, 412.5",
    "1842, Seated Liberty half dollar, XAG, 206.25",
    "1846, Liberty eagle, XAU, 258",
    "1846, Liberty half eagle, XAU, 129",
    // Act of March 3, 1849 (9 Stat. 397): double eagles of 516 grains, gold dollars of 25.8
    "1904, double eagle, XAU, 516",
    "1853, gold dollar, XAU, 25.8",
    // Act of February 21, 1853 (10 Stat. 160), section 1: half dollar 192 grains, others in
    // proportion
    "1858, Seated Liberty half dollar, XAG, 192",
    "1858, Seated Liberty quarter, XAG, 96",
    "1858, Seated Liberty dime, XAG, 38.4",
    // Act of February 12, 1873 (17 Stat. 424), section 15: trade dollar 420 grains
    "1877, trade dollar, XAG, 420",
    // Act of February 28, 1878 (20 Stat. 25): silver dollars of 412.5 grains
    "1885, Morgan dollar, XAG, 412.5",
    "1923, Peace dollar, XAG, 412.5"
  })
  void grainsNineTenthsFine(int year, String coin, String metal, BigDecimal grains)
      throws IOException {
    BigDecimal fine = grains.multiply(new BigDecimal("0.9"));
    agrees(refreshed(year, coin, 1), metal, fine.divide(GRAINS_PER_OUNCE, MathContext.DECIMAL64));
  }

  /** Fine grams as the acts state them or as they follow. */
  @ParameterizedTest
  @CsvSource({
    // Act of February 12, 1873, section 15: half dollar 12.5 grams, quarter and dime one half and
    // one fifth
    "1899, Barber half dollar, 11.25",
    "1943, half dollar, 11.25",
    "1964, half dollar, 11.25",
    "1932, quarter, 5.625",
    "1945, dime, 2.25",
    // Act of March 27, 1942 (56 Stat. 184): five cents of 5 grams; 350 fine as then struck
    "1943, five cents, 1.75",
    // Coinage Act of 1965 (79 Stat. 254): half dollar of 11.5 grams with 4.6 grams of silver
    "1967, half dollar, 4.6",
    // Act of December 31, 1970 (84 Stat. 1768): dollar of 24.592 grams with 9.837 grams of silver
    "1973-S, Eisenhower dollar 40% silver, 9.837"
  })
  void fineGrams(String date, String coin, BigDecimal grams) throws IOException {
    Book book =
        Book.xlsx().sheet("Coins", Book.cells("Date", "Coin", "Count"), Book.cells(date, coin, 1));
    Path file = book.save(folder.resolve("coin.xlsx"));
    assertThat(CommandRun.refresh(file).done()).isTrue();
    FilledRow row = FilledTable.ofWorkbook(file, "Coins", 1).row(2);
    agrees(row, "XAG", grams.divide(GRAMS_PER_OUNCE, MathContext.DECIMAL64));
  }

  /** 31 U.S.C. 5112 (a) and (e), (k): one troy ounce of fine metal. */
  @ParameterizedTest
  @CsvSource({
    "2015, silver eagle, XAG, 1",
    "2015, gold eagle $50, XAU, 1",
    "2015, gold buffalo $50, XAU, 1"
  })
  void ouncesOfBullion(int year, String coin, String metal, BigDecimal ounces) throws IOException {
    agrees(refreshed(year, coin, 1), metal, ounces);
  }

  private static void agrees(FilledRow row, String metal, BigDecimal ounces) {
    assertThat(row.state()).as(row.toString()).isEqualTo(FilledRow.State.VALUED);
    BigDecimal off = row.ounces(metal).subtract(ounces).abs();
    assertThat(off).as(row + ", by the law " + ounces).isLessThan(new BigDecimal("0.00002"));
  }

  /**
   * A dollar in halves is 2 x 12.5 g, 900 fine: 22.5 g or 0.7234 ozt. It is worth a dollar where an
   * ounce costs 31.1034768 / 22.5 = 1.3824 dollars.
   */
  @Test
  void aDollarOfFaceInHalves() throws IOException {
    BigDecimal fine = new BigDecimal("22.5").divide(GRAMS_PER_OUNCE, MathContext.DECIMAL64);
    assertThat(fine.setScale(4, RoundingMode.HALF_UP)).isEqualByComparingTo("0.7234");
    BigDecimal parity = GRAMS_PER_OUNCE.divide(new BigDecimal("22.5"), MathContext.DECIMAL64);
    assertThat(parity.setScale(4, RoundingMode.HALF_UP)).isEqualByComparingTo("1.3824");
    FilledRow halves =
        refreshed(
            1964, "half dollar", 200, "--spot", "XAG=" + parity.setScale(10, RoundingMode.HALF_UP));
    assertThat(halves.melt().orElseThrow()).isEqualByComparingTo("100.00");
    FilledRow dimes =
        refreshed(1964, "dime", 1000, "--spot", "XAG=" + parity.setScale(10, RoundingMode.HALF_UP));
    assertThat(dimes.melt().orElseThrow()).isEqualByComparingTo("100.00");
  }

  /**
   * A standard silver dollar holds 371.25 grains: worth a dollar at 480 / 371.25 = 1.2929 an ounce.
   */
  @Test
  void aStandardDollar() throws IOException {
    BigDecimal parity = GRAINS_PER_OUNCE.divide(new BigDecimal("371.25"), MathContext.DECIMAL64);
    FilledRow dollars =
        refreshed(
            1885,
            "Morgan dollar",
            100,
            "--spot",
            "XAG=" + parity.setScale(10, RoundingMode.HALF_UP));
    assertThat(dollars.melt().orElseThrow()).isEqualByComparingTo("100.00");
  }

  @ParameterizedTest
  @CsvSource({
    "1943-P war nickel, 1.75 g",
    "1967 Kennedy half dollar, 4.6 g",
    "1964 Kennedy half dollar, 11.25 g"
  })
  void explainShowsTheFineMass(String coin, String fine) {
    CommandRun run = CommandRun.of("explain", "--spot", "XAG=30", coin);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains(fine).contains("silver");
  }
}
