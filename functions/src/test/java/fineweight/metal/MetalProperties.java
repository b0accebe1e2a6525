package fineweight.metal;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.quantity.Fineness;
import fineweight.quantity.Mass;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class MetalProperties {
  @Property
  void whatAnAlloyPrintsIsReadBack(@ForAll("alloys") Composition alloy) {
    assertThat(Composition.parse(alloy.toString())).isEqualTo(alloy);
    assertThat(alloy.unnamedPerMille()).isBetween(BigDecimal.ZERO, new BigDecimal(1000));
    alloy.mainPreciousMetal().ifPresent(metal -> assertThat(metal.isPrecious()).isTrue());
  }

  @Property
  void everyMetalIsKnownByItsCodes(@ForAll Metal metal) {
    assertThat(Metal.ofCode(metal.symbol().toLowerCase(java.util.Locale.ROOT))).contains(metal);
    metal.ounceCode().ifPresent(code -> assertThat(Metal.ofCode(code)).contains(metal));
    assertThat(metal.isPrecious()).isEqualTo(metal.ounceCode().isPresent());
  }

  @Property
  void aTotalIsTheSumOfItsPartsInAnyOrder(@ForAll("contents") List<FineContent> parts) {
    List<FineContent> other = new ArrayList<>(parts);
    Collections.reverse(other);
    FineContent total = sum(parts);
    assertThat(total).isEqualTo(sum(other));
    for (Metal metal : Metal.values()) {
      BigDecimal grams =
          parts.stream()
              .map(part -> part.of(metal).grams())
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      assertThat(total.of(metal).grams()).isEqualByComparingTo(grams);
    }
  }

  @Property
  void manyPiecesAreAsMuchAsOnePieceManyTimes(@ForAll("contents") List<FineContent> parts) {
    FineContent one = parts.get(0);
    FineContent added = sum(Collections.nCopies(7, one));
    assertThat(one.times(new BigDecimal(7))).isEqualTo(added);
    assertThat(one.times(BigDecimal.ZERO)).isEqualTo(FineContent.NONE);
  }

  private static FineContent sum(List<FineContent> parts) {
    return parts.stream().reduce(FineContent.NONE, FineContent::plus);
  }

  @Provide
  Arbitrary<List<FineContent>> contents() {
    Arbitrary<Mass> masses =
        Arbitraries.bigDecimals()
            .between(BigDecimal.ZERO, new BigDecimal(500))
            .ofScale(5)
            .map(Mass::ofGrams);
    Arbitrary<FineContent> one =
        Arbitraries.maps(Arbitraries.of(Metal.class), masses)
            .ofMaxSize(4)
            .map((Map<Metal, Mass> held) -> new FineContent(held));
    return one.list().ofMinSize(1).ofMaxSize(12);
  }

  /** Up to four parts of at most a quarter each, some of two metals together. */
  @Provide
  Arbitrary<Composition> alloys() {
    Arbitrary<Fineness> shares =
        Arbitraries.bigDecimals()
            .between(BigDecimal.ONE, new BigDecimal(250))
            .ofScale(1)
            .map(Fineness::ofPerMille);
    Arbitrary<List<Metal>> metals = Arbitraries.shuffle(Metal.values());
    return metals.flatMap(
        order -> shares.list().ofMinSize(1).ofMaxSize(4).map(list -> alloy(order, list)));
  }

  private static Composition alloy(List<Metal> metals, List<Fineness> shares) {
    List<Composition.Part> parts = new ArrayList<>();
    int next = 0;
    for (Fineness share : shares) {
      Set<Metal> named = EnumSet.of(metals.get(next++));
      if (next % 3 == 0) {
        named.add(metals.get(next++));
      }
      parts.add(new Composition.Part(named, share));
    }
    return Composition.of(parts);
  }
}
