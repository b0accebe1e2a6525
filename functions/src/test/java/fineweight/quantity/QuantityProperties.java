package fineweight.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

class QuantityProperties {
  @Property
  void thereIsNeverMoreFineThanGross(
      @ForAll @BigRange(min = "0", max = "100000") @Scale(6) BigDecimal grams,
      @ForAll @BigRange(min = "0", max = "1000") @Scale(3) BigDecimal perMille) {
    Mass gross = Mass.ofGrams(grams);
    Mass fine = new Fineness(perMille).of(gross);
    assertThat(fine).isLessThanOrEqualTo(gross);
    BigDecimal thousandfold = fine.grams().multiply(new BigDecimal(1000));
    assertThat(thousandfold).isEqualByComparingTo(grams.multiply(perMille));
  }

  @Property
  void aMassInAUnitIsThatMass(
      @ForAll @BigRange(min = "0", max = "1000000") @Scale(8) BigDecimal amount,
      @ForAll MassUnit unit) {
    assertThat(Mass.of(amount, unit).in(unit)).isEqualByComparingTo(amount);
  }

  @Property
  void aSumIsTheSameInAnyOrder(
      @ForAll @Size(min = 1, max = 30)
          List<@BigRange(min = "0", max = "9999") @Scale(7) BigDecimal> parts) {
    List<BigDecimal> other = new ArrayList<>(parts);
    Collections.reverse(other);
    assertThat(sum(parts)).isEqualTo(sum(other));
    BigDecimal plain = parts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(sum(parts).grams()).isEqualByComparingTo(plain);
  }

  private static Mass sum(List<BigDecimal> parts) {
    return parts.stream().map(Mass::ofGrams).reduce(Mass.ZERO, Mass::plus);
  }

  /** Trailing zeros make no other mass. */
  @Property
  void equalMassesAreEqualObjects(
      @ForAll @BigRange(min = "0", max = "9999") @Scale(4) BigDecimal grams) {
    Mass longer = Mass.ofGrams(grams.setScale(9));
    assertThat(longer).isEqualTo(Mass.ofGrams(grams)).hasSameHashCodeAs(Mass.ofGrams(grams));
    assertThat(Mass.ofGrams(longer.toString().replace(" g", ""))).isEqualTo(longer);
    assertThat(Fineness.ofPerMille("900.0")).isEqualTo(Fineness.ofPerMille("9E+2"));
  }

  @Property
  void impossibleQuantitiesAreRefused(
      @ForAll @BigRange(min = "0.001", max = "9999") @Scale(3) BigDecimal amount) {
    assertThatThrownBy(() -> Mass.ofGrams(amount.negate()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Fineness(amount.negate()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Fineness(amount.add(new BigDecimal(1000))))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
