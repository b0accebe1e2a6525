package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class DistinctionTest {
  @Test
  void aVariantWithoutYearsHoldsInAllOfThem() {
    assertThat(variantIn("thick flan, lettered edge", 1795)).isEqualTo("thick flan, lettered edge");
    assertThat(variantIn("", 1795)).isEmpty();
  }

  @Test
  void aVariantWithYearsHoldsInThemOnly() {
    String variant = "1853: arrows at the date; 1866-1873: silver; 1998-: white";
    assertThat(variantIn(variant, 1853)).isEqualTo("arrows at the date");
    assertThat(variantIn(variant, 1870)).isEqualTo("silver");
    assertThat(variantIn(variant, 2026)).isEqualTo("white");
    assertThat(variantIn(variant, 1860)).isEmpty();
  }

  @Test
  void tellsAreReadWithTheirYears() {
    List<Tell> tells = Tell.parseAll("1853: Arrows; 1873: no arrows; trade");
    assertThat(tells).extracting(Tell::phrase).containsExactly("arrows", "no arrows", "trade");
    assertThat(tells.get(0).holdsIn(1853)).isTrue();
    assertThat(tells.get(0).holdsIn(1873)).isFalse();
    assertThat(tells.get(2).holdsIn(1600)).isTrue();
    assertThat(Tell.parseAll("  ")).isEmpty();
  }

  @Test
  void aTellWithoutAWordIsRefused() {
    assertThatThrownBy(() -> Tell.parseAll("1853: ; trade"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Tell.parseAll("arrows;;rays"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Tell.parseAll("early: arrows"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static String variantIn(String variant, int year) {
    return new Distinction(variant, List.of(), List.of()).variantIn(year);
  }
}
