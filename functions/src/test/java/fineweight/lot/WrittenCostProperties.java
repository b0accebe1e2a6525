package fineweight.lot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class WrittenCostProperties {
  /** Few different amounts, so that equal and adding-up figures come often. */
  @Provide
  Arbitrary<Optional<Money>> figure() {
    return Arbitraries.of(0, 500, 1000, 1500, 6000)
        .map(cents -> Money.ofMinor(CurrencyUnit.USD, cents))
        .optional(0.7);
  }

  @Provide
  Arbitrary<List<Optional<Money>>> rows() {
    return figure().list().ofMinSize(1).ofMaxSize(6);
  }

  @Property
  void everyReadingIsOneThatTheFiguresAllow(
      @ForAll("rows") List<Optional<Money>> rows, @ForAll("figure") Optional<Money> ownSheet) {
    List<Money> figures = rows.stream().flatMap(Optional::stream).toList();
    Money sum = figures.isEmpty() ? Money.zero(CurrencyUnit.USD) : Money.total(figures);
    WrittenCost cost = WrittenCost.of(rows, ownSheet);
    if (cost instanceof WrittenCost.Known known) {
      assertThat(known.cost().isEqual(sum) || ownSheet.filter(known.cost()::isEqual).isPresent())
          .isTrue();
    } else if (cost instanceof WrittenCost.Asks asks) {
      assertThat(asks.sentence()).endsWith("?");
      assertThat(asks.least()).isLessThanOrEqualTo(asks.most());
      assertThat(asks.most().isEqual(sum) || ownSheet.filter(asks.most()::isEqual).isPresent())
          .isTrue();
    } else {
      assertThat(figures).isEmpty();
      assertThat(ownSheet).isEmpty();
    }
  }

  @Property
  void repeatedEqualFiguresAreNeverReadInSilence(@ForAll("rows") List<Optional<Money>> rows) {
    List<Money> figures = rows.stream().flatMap(Optional::stream).toList();
    boolean repeated =
        figures.size() > 1
            && figures.get(0).isPositive()
            && figures.stream().allMatch(figures.get(0)::isEqual);
    if (repeated) {
      assertThat(WrittenCost.of(rows, Optional.empty())).isInstanceOf(WrittenCost.Asks.class);
    }
  }
}
