package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class StandardsTest {
  private final Standards catalogue = Standards.catalogue();

  @Test
  void anOwnStandardReplacesOneWithTheSameIdAndOthersAreAdded() {
    CoinStandard half = catalogue.byId("us-half-1964-kennedy").orElseThrow();
    CoinStandard own =
        new CoinStandard(
            half.id(),
            half.issue(),
            half.distinction(),
            half.specification(),
            new Evidence(List.of(), "", Certainty.OWN, "weighed"));
    CoinStandard other =
        new CoinStandard(
            "own-piece", half.issue(), half.distinction(), half.specification(), own.evidence());
    Standards merged = catalogue.with(List.of(own, other));
    assertThat(merged.byId(half.id())).contains(own);
    assertThat(merged.all()).hasSize(catalogue.all().size() + 1).contains(other);
    assertThat(merged.of("US")).contains(own, other).doesNotContain(half);
    assertThat(catalogue.byId(half.id())).contains(half);
  }

  @Test
  void theSameIdTwiceIsRefused() {
    CoinStandard half = catalogue.byId("us-half-1964-kennedy").orElseThrow();
    assertThatThrownBy(() -> Standards.of(List.of(half, half)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("us-half-1964-kennedy");
  }

  @Test
  void anIssuerWithoutStandardsHasNone() {
    assertThat(catalogue.of("Atlantis")).isEmpty();
    assertThat(catalogue.byId("atlantis-1")).isEmpty();
  }
}
