package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.Metal;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;

class HeapByScaleProperties {
  @Property
  void theMetalIsThatOnTheScaleWhateverTheFace(
      @ForAll HeapByScale.Kind kind,
      @ForAll @BigRange(min = "0.1", max = "30000") @Scale(1) BigDecimal grams,
      @ForAll @BigRange(min = "0.05", max = "1000") @Scale(2) BigDecimal face) {
    Mass weighed = Mass.ofGrams(grams);
    HeapByScale counted = HeapByScale.of(kind, weighed, Optional.of(face));
    HeapByScale uncounted = HeapByScale.of(kind, weighed, Optional.empty());
    assertThat(counted.content()).isEqualTo(uncounted.content());
    assertThat(counted.content().of(Metal.SILVER).compareTo(weighed)).isNegative();
  }

  @Property
  void wearIsToldExactlyWhereScaleAndFaceAgree(
      @ForAll HeapByScale.Kind kind,
      @ForAll @BigRange(min = "0.05", max = "1000") @Scale(2) BigDecimal face,
      @ForAll @BigRange(min = "0.5", max = "1.2") @Scale(3) BigDecimal ratio) {
    Mass weighed = kind.perDollar().times(face).times(ratio);
    HeapByScale heap = HeapByScale.of(kind, weighed, Optional.of(face));
    boolean agrees =
        ratio.compareTo(new BigDecimal("1.005")) <= 0
            && ratio.compareTo(new BigDecimal("0.9")) >= 0;
    assertThat(heap.finding() == HeapByScale.Finding.AGREE).isEqualTo(agrees);
    assertThat(heap.wear().isPresent()).isEqualTo(agrees);
    heap.wear()
        .ifPresent(
            wear ->
                assertThat(wear)
                    .isEqualByComparingTo(BigDecimal.ONE.subtract(ratio).max(BigDecimal.ZERO)));
  }
}
