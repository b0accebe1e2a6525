package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HeapByScaleTest {
  private static HeapByScale heap(HeapByScale.Kind kind, String grams, String face) {
    return HeapByScale.of(
        kind,
        Mass.ofGrams(grams),
        face.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(face)));
  }

  private static BigDecimal ounces(HeapByScale heap) {
    return heap.content().troyOunces(Metal.SILVER).setScale(4, RoundingMode.HALF_UP);
  }

  /** 1240 x 0.9 = 1116 g, and 1116 / 31.1034768 (NIST Handbook 44) = 35.8802. */
  @Test
  void weighsAHeapWhoseFaceNobodyCounted() {
    HeapByScale heap = heap(HeapByScale.Kind.US_90, "1240", "");
    assertThat(ounces(heap)).isEqualByComparingTo("35.8802");
    assertThat(heap.finding()).isEqualTo(HeapByScale.Finding.FACE_NOT_COUNTED);
    assertThat(heap.wear()).isEmpty();
    assertThat(heap.sentence())
        .isEqualTo(
            "1240 g of United States 90 % silver hold 35.8802 ozt of silver; the face, not counted,"
                + " is 49.60 dollars if unworn, more if worn");
  }

  /**
   * 50 dollars weigh 1250 g as struck (Coinage Act of 1873, section 15): 10 g or 0.8 % are gone.
   */
  @Test
  void theFaceTellsTheWear() {
    HeapByScale heap = heap(HeapByScale.Kind.US_90, "1240", "50");
    assertThat(heap.finding()).isEqualTo(HeapByScale.Finding.AGREE);
    assertThat(heap.struck()).contains(Mass.ofGrams("1250"));
    assertThat(heap.wear().orElseThrow()).isEqualByComparingTo("0.008");
    assertThat(heap.sentence()).endsWith("against its face it has lost 0.80 % by wear");
    assertThat(ounces(heap)).isEqualByComparingTo("35.8802");
  }

  /**
   * A bag of 1000 dollars as struck: 22,500 g fine, 723.4 ounces; trading as 715 it would have lost
   * about 1.16 % (common practice, no source).
   */
  @Test
  void aBagAsStruckAndAsTraded() {
    assertThat(ounces(heap(HeapByScale.Kind.US_90, "25000", "1000")))
        .isEqualByComparingTo("723.3918");
    HeapByScale worn = heap(HeapByScale.Kind.US_90, "24710", "1000");
    assertThat(ounces(worn)).isBetween(new BigDecimal("714.9"), new BigDecimal("715.1"));
    assertThat(worn.wear().orElseThrow()).isEqualByComparingTo("0.0116");
  }

  @Test
  void aHeapTooHeavyForItsFaceIsQuestioned() {
    HeapByScale heap = heap(HeapByScale.Kind.US_90, "1300", "50");
    assertThat(heap.finding()).isEqualTo(HeapByScale.Finding.TOO_HEAVY);
    assertThat(heap.wear()).isEmpty();
    assertThat(heap.sentence()).contains("only 1250 g as struck");
    assertThat(heap(HeapByScale.Kind.US_90, "1256", "50").finding())
        .isEqualTo(HeapByScale.Finding.AGREE);
    assertThat(heap(HeapByScale.Kind.US_90, "1256", "50").wear().orElseThrow()).isZero();
    assertThat(heap(HeapByScale.Kind.US_90, "1257", "50").finding())
        .isEqualTo(HeapByScale.Finding.TOO_HEAVY);
  }

  /** Clad quarters weigh 5.67 g, silver ones 6.25 g: fifty dollars of clad weigh 1134 g. */
  @Test
  void aHeapTooLightForItsFaceIsQuestioned() {
    assertThat(heap(HeapByScale.Kind.US_90, "1124", "50").finding())
        .isEqualTo(HeapByScale.Finding.TOO_LIGHT);
    assertThat(heap(HeapByScale.Kind.US_90, "1125", "50").finding())
        .isEqualTo(HeapByScale.Finding.AGREE);
  }

  /** Coinage Act of 1965, section 101(a): a half of 11.5 g holds 4.6 g of silver. */
  @Test
  void twentyHalvesOfFortyPerCent() {
    HeapByScale heap = heap(HeapByScale.Kind.US_40, "230", "10");
    assertThat(heap.content().of(Metal.SILVER)).isEqualTo(Mass.ofGrams("92"));
    assertThat(heap.wear().orElseThrow()).isZero();
  }

  /** The Mint's wartime alloy of 350 silver in 5 g: 1.75 g a piece. */
  @Test
  void aRollOfWartimeFiveCents() {
    HeapByScale heap = heap(HeapByScale.Kind.US_WARTIME_FIVE_CENTS, "200", "2");
    assertThat(heap.content().of(Metal.SILVER)).isEqualTo(Mass.ofGrams("70"));
    assertThat(heap.finding()).isEqualTo(HeapByScale.Finding.AGREE);
  }

  @Test
  void refusesNothingOnTheScale() {
    assertThatThrownBy(() -> heap(HeapByScale.Kind.US_90, "0", ""))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> heap(HeapByScale.Kind.US_90, "10", "0"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void halfOfOnePerCentAboveIsStillPutDownToTheScale() {
    assertThat(heap(HeapByScale.Kind.US_90, "1256.25", "50").finding())
        .isEqualTo(HeapByScale.Finding.AGREE);
    assertThat(heap(HeapByScale.Kind.US_90, "1256.26", "50").finding())
        .isEqualTo(HeapByScale.Finding.TOO_HEAVY);
  }

  @Test
  void everyKindIsToldInWords() {
    for (HeapByScale.Kind kind : HeapByScale.Kind.values()) {
      assertThat(heap(kind, "100", "").sentence())
          .startsWith("100 g of " + kind.words() + " hold ");
    }
  }
}
