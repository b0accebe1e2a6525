package fineweight.price;

import static fineweight.valuation.Samples.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.grade.Condition;
import fineweight.grade.Grade;
import fineweight.standard.Years;
import fineweight.valuation.Basis;
import fineweight.valuation.Samples;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joda.money.BigMoney;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All prices are invented. */
class PriceListTest {
  private static final LocalDate MAY = LocalDate.of(2025, 5, 1);
  private static final LocalDate JUNE = LocalDate.of(2025, 6, 1);

  private static ListedPrice line(
      String years, String mint, String grade, boolean certified, String each) {
    return new ListedPrice(
        new ListedPrice.Pieces(
            "Winged Liberty dime",
            years.isEmpty() ? Optional.empty() : Optional.of(Years.parse(years)),
            mint),
        Grade.read(grade),
        certified,
        usd(each),
        Optional.of(MAY),
        "my list");
  }

  private static ListedPrice dated(ListedPrice line, LocalDate day, String each) {
    return new ListedPrice(
        line.pieces(), line.grade(), line.certified(), usd(each), Optional.of(day), "my list");
  }

  private static final PriceList LIST =
      PriceList.of(
          List.of(
              line("1916-1945", "", "VG-8", false, "3.00"),
              line("1916-1945", "", "VF-20", false, "4.50"),
              line("1916-1945", "", "AU-50", false, "9.00"),
              line("1916", "D", "G-4", false, "700"),
              line("1916", "D", "VG-8", false, "1100"),
              line("1916-1945", "", "MS-63", true, "30"),
              line("1916-1945", "", "MS-65", true, "50")));

  private static PriceAnswer ask(PriceList list, int year, String mint, Condition condition) {
    return list.price(
        new PriceQuestion(
            Set.of("us-dime-1916-1945-mercury", "winged  liberty DIME"), year, mint, condition));
  }

  private static BigMoney each(PriceAnswer answer) {
    assertThat(answer).isInstanceOf(PriceAnswer.Found.class);
    return ((PriceAnswer.Found) answer).each();
  }

  private static void assertNone(PriceAnswer answer, String sentence) {
    assertThat(answer).isInstanceOf(PriceAnswer.NotListed.class);
    assertThat(answer.sentence()).isEqualTo(sentence);
  }

  private static Condition raw(String grade) {
    return Condition.raw(Grade.read(grade).orElseThrow());
  }

  private static Condition certified(String grade) {
    return Condition.certified(Grade.read(grade).orElseThrow());
  }

  @Test
  void aListedGradeHasItsPriceWithAgeAndOrigin() {
    PriceAnswer answer = ask(LIST, 1944, "", raw("VF-20"));
    assertThat(each(answer)).isEqualTo(usd("4.5"));
    assertThat(answer.sentence()).isEqualTo("price for grade 20, my list, 2025-05-01");
    assertThat(((PriceAnswer.Found) answer).asOf()).contains(MAY);
  }

  /** Straight line from 8 (3.00) to 20 (4.50): twelve and a half cents a step. */
  @ParameterizedTest
  @CsvSource({"F-12, 3.50", "F-15, 3.875", "VG-10, 3.25"})
  void betweenTwoGradesThePriceLiesOnTheStraightLine(String grade, String price) {
    assertThat(each(ask(LIST, 1944, "", raw(grade))).isEqual(usd(price))).isTrue();
  }

  @Test
  void theTwoSidesAreNamed() {
    assertThat(ask(LIST, 1944, "", raw("F-12")).sentence())
        .isEqualTo(
            "grade 12 lies between 8 (3.00 USD, my list, 2025-05-01) and 20 (4.50 USD, my list,"
                + " 2025-05-01)");
  }

  @Test
  void aWordCountsAsTheLowEndOfItsNumbers() {
    PriceAnswer answer = ask(LIST, 1944, "", raw("VF"));
    assertThat(each(answer).isEqual(usd("4.50"))).isTrue();
    assertThat(answer.sentence()).startsWith("price for grade 20, the low end of 20 to 35");
  }

  @Test
  void thereIsNoPriceBeyondTheEnds() {
    assertNone(ask(LIST, 1944, "", raw("G-4")), "your list ends at grade 8 and says nothing of 4");
    assertNone(
        ask(LIST, 1944, "", raw("MS-63")), "your list ends at grade 50 and says nothing of 63");
    assertNone(
        ask(LIST, 1944, "", certified("MS-66")),
        "your list ends at grade 65 and says nothing of 66");
  }

  @Test
  void onlyCertifiedGradesPickCertifiedPrices() {
    assertThat(each(ask(LIST, 1944, "", certified("MS-64"))).isEqual(usd("40"))).isTrue();
    assertThat(ask(LIST, 1944, "", raw("MS-64"))).isInstanceOf(PriceAnswer.NotListed.class);
    PriceList certifiedOnly = PriceList.of(List.of(line("", "", "MS-65", true, "50")));
    assertNone(
        ask(certifiedOnly, 1944, "", raw("MS-65")),
        "your list has no price for a raw piece here; only an independent certifier's grade takes a"
            + " certified price");
    PriceList rawOnly = PriceList.of(List.of(line("", "", "MS-65", false, "20")));
    assertNone(
        ask(rawOnly, 1944, "", certified("MS-65")),
        "your list has no price for a certified piece here, only others");
  }

  @Test
  void theScarceMintHasItsOwnPricesAndNeverTheCommonOnes() {
    assertThat(each(ask(LIST, 1916, "D", raw("G-6"))).isEqual(usd("900"))).isTrue();
    assertNone(
        ask(LIST, 1916, "D", raw("VF-20")), "your list ends at grade 8 and says nothing of 20");
    assertThat(each(ask(LIST, 1916, "S", raw("VF-20"))).isEqual(usd("4.50"))).isTrue();
  }

  @Test
  void noMintMarkMayBeAskedForByWord() {
    PriceList list =
        PriceList.of(
            List.of(
                line("1921", "none", "VF-20", false, "60"),
                line("1921", "D", "VF-20", false, "90"),
                line("", "", "VF-20", false, "4")));
    assertThat(each(ask(list, 1921, "", raw("VF-20"))).isEqual(usd("60"))).isTrue();
    assertThat(each(ask(list, 1921, "d", raw("VF-20"))).isEqual(usd("90"))).isTrue();
    assertThat(each(ask(list, 1921, "S", raw("VF-20"))).isEqual(usd("4"))).isTrue();
  }

  @Test
  void theLineForTheFewestYearsCounts() {
    PriceList list =
        PriceList.of(
            List.of(
                line("", "", "VF-20", false, "1"),
                line("1916-1945", "", "VF-20", false, "2"),
                line("1940-", "", "VF-20", false, "3"),
                line("1942", "", "VF-20", false, "4")));
    assertThat(each(ask(list, 1942, "", raw("VF-20"))).isEqual(usd("4"))).isTrue();
    assertThat(each(ask(list, 1943, "", raw("VF-20"))).isEqual(usd("2"))).isTrue();
    assertThat(each(ask(list, 1990, "", raw("VF-20"))).isEqual(usd("3"))).isTrue();
    assertThat(each(ask(list, 1900, "", raw("VF-20"))).isEqual(usd("1"))).isTrue();
  }

  @Test
  void ofTwoLinesForOneGradeTheNewestCounts() {
    ListedPrice may = line("", "", "VF-20", false, "4");
    for (List<ListedPrice> order :
        List.of(List.of(may, dated(may, JUNE, "6")), List.of(dated(may, JUNE, "6"), may))) {
      PriceAnswer answer = ask(PriceList.of(order), 1944, "", raw("VF-20"));
      assertThat(each(answer).isEqual(usd("6"))).isTrue();
      assertThat(answer.sentence())
          .endsWith("2 lines for the same grade, the newest or lowest counts");
    }
  }

  @Test
  void ofTwoLinesOfOneDayTheLowestCountsAndEqualOnesAreNoTie() {
    ListedPrice four = line("", "", "VF-20", false, "4");
    assertThat(
            each(ask(PriceList.of(List.of(dated(four, MAY, "5"), four)), 1944, "", raw("VF-20")))
                .isEqual(usd("4")))
        .isTrue();
    assertThat(ask(PriceList.of(List.of(four, four)), 1944, "", raw("VF-20")).sentence())
        .doesNotContain("lines for the same grade");
  }

  @Test
  void anInterpolatedPriceIsAsOldAsItsOlderSide() {
    ListedPrice low = line("", "", "VF-20", false, "4");
    ListedPrice high = dated(line("", "", "VF-30", false, "6"), JUNE, "6");
    PriceAnswer.Found answer =
        (PriceAnswer.Found) ask(PriceList.of(List.of(low, high)), 1944, "", raw("VF-25"));
    assertThat(answer.asOf()).contains(MAY);
    ListedPrice undated =
        new ListedPrice(high.pieces(), high.grade(), false, usd("6"), Optional.empty(), "");
    PriceAnswer.Found unknown =
        (PriceAnswer.Found) ask(PriceList.of(List.of(low, undated)), 1944, "", raw("VF-25"));
    assertThat(unknown.asOf()).isEmpty();
    assertThat(unknown.sentence()).contains("no date");
  }

  @Test
  void aPriceWithoutGradeIsForPiecesWhoseGradeTheListDoesNotGoBy() {
    PriceList list = PriceList.of(List.of(line("", "", "", false, "2.75")));
    PriceAnswer answer = ask(list, 1944, "", Condition.UNKNOWN);
    assertThat(each(answer).isEqual(usd("2.75"))).isTrue();
    assertThat(answer.sentence()).startsWith("price without regard to grade");
    assertThat(each(ask(list, 1944, "", raw("VF"))).isEqual(usd("2.75"))).isTrue();
    assertNone(
        ask(LIST, 1944, "", Condition.UNKNOWN), "your list goes by grade and the piece has none");
  }

  @Test
  void proofsTakeThePricesOfProofs() {
    PriceList list =
        PriceList.of(
            List.of(line("", "", "PR-65", false, "80"), line("", "", "MS-65", false, "20")));
    assertThat(each(ask(list, 1942, "", raw("PR-65"))).isEqual(usd("80"))).isTrue();
    assertThat(each(ask(list, 1942, "", raw("MS-65"))).isEqual(usd("20"))).isTrue();
  }

  @Test
  void aMissingTypeAndMixedCurrenciesAreSaid() {
    PriceAnswer other =
        LIST.price(new PriceQuestion(Set.of("Barber dime"), 1900, "", raw("VF-20")));
    assertNone(other, "your list has no line for this type, year and mint");
    List<ListedPrice> mixed = new ArrayList<>();
    mixed.add(line("", "", "VF-20", false, "4"));
    mixed.add(
        new ListedPrice(
            mixed.get(0).pieces(),
            Grade.read("VF-30"),
            false,
            BigMoney.parse("EUR 6"),
            Optional.empty(),
            ""));
    assertNone(
        ask(PriceList.of(mixed), 1944, "", raw("VF-25")),
        "your list has lines in two currencies for this piece");
  }

  @Test
  void aFoundPriceBecomesAnOwnPrice() {
    PriceAnswer.Found found = (PriceAnswer.Found) ask(LIST, 1944, "", raw("VF-20"));
    assertThat(found.asOwnPrice().basis()).isEqualTo(Basis.OWN_PRICE);
    assertThat(
            new fineweight.valuation.Valuer(Samples.SPOTS)
                .value(fineweight.valuation.Piece.of(Samples.DIME).priced(found.asOwnPrice()))
                .worth()
                .sentence())
        .isEqualTo("your price list: 4.50 USD each (price for grade 20, my list, 2025-05-01)");
  }

  @Test
  void refusesLinesThatCannotBe() {
    assertThatThrownBy(() -> line("", "", "VF", false, "-1"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new ListedPrice.Pieces("  ", Optional.empty(), ""))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("type");
  }

  @Test
  void theMintCountsBeforeTheYears() {
    PriceList list =
        PriceList.of(
            List.of(
                line("1916", "", "VF-20", false, "5"),
                line("1916-1945", "D", "VF-20", false, "800")));
    assertThat(each(ask(list, 1916, "D", raw("VF-20"))).isEqual(usd("800"))).isTrue();
    assertThat(each(ask(list, 1916, "S", raw("VF-20"))).isEqual(usd("5"))).isTrue();
  }

  @Test
  void linesForAnotherMintDoNotMixWithThoseForAny() {
    PriceList list =
        PriceList.of(
            List.of(
                line("1916", "D", "VG-8", false, "1000"), line("1916", "", "VF-20", false, "5")));
    assertNone(
        ask(list, 1916, "D", raw("F-12")), "your list ends at grade 8 and says nothing of 12");
  }

  @Test
  void aMissingProofPriceIsSaid() {
    assertNone(
        ask(LIST, 1942, "", raw("PR-65")),
        "your list has no price for a raw proof piece here; only an independent certifier's grade"
            + " takes a certified price");
    assertNone(
        ask(LIST, 1942, "", certified("PR-65")),
        "your list has no price for a certified proof piece here, only others");
  }

  @Test
  void aLineWithoutOriginIsToldByItsDay() {
    ListedPrice line = line("", "", "VF-20", false, "4");
    ListedPrice plain =
        new ListedPrice(line.pieces(), line.grade(), false, usd("4"), Optional.of(JUNE), "");
    assertThat(ask(PriceList.of(List.of(plain)), 1944, "", raw("VF-20")).sentence())
        .isEqualTo("price for grade 20, 2025-06-01");
  }
}
