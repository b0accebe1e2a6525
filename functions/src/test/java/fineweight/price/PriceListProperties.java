package fineweight.price;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.grade.Condition;
import fineweight.grade.Grade;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;

class PriceListProperties {
  @Property
  void aPriceLiesBetweenItsNeighboursAndNeverBeyondTheEnds(
      @ForAll @Size(min = 1, max = 10)
          Map<@IntRange(min = 1, max = 70) Integer, @IntRange(min = 0, max = 5000) Integer> points,
      @ForAll @IntRange(min = 1, max = 70) int grade,
      @ForAll boolean certified) {
    TreeMap<Integer, Integer> sorted = new TreeMap<>(points);
    List<ListedPrice> lines = new ArrayList<>();
    sorted.forEach((at, price) -> lines.add(line(at, price, certified)));
    PriceAnswer answer =
        PriceList.of(lines)
            .price(
                new PriceQuestion(
                    Set.of("any"),
                    1900,
                    "",
                    new Condition(Optional.of(Grade.of(grade)), certified, false)));

    boolean within = sorted.floorKey(grade) != null && sorted.ceilingKey(grade) != null;
    assertThat(answer instanceof PriceAnswer.Found).isEqualTo(within);
    if (answer instanceof PriceAnswer.Found found) {
      int below = sorted.floorEntry(grade).getValue();
      int above = sorted.ceilingEntry(grade).getValue();
      assertThat(found.each().getAmount())
          .isBetween(
              BigDecimal.valueOf(Math.min(below, above)),
              BigDecimal.valueOf(Math.max(below, above)));
    }
  }

  private static ListedPrice line(int grade, int price, boolean certified) {
    return new ListedPrice(
        new ListedPrice.Pieces("any", Optional.empty(), ""),
        Optional.of(Grade.of(grade)),
        certified,
        BigMoney.of(CurrencyUnit.USD, BigDecimal.valueOf(price)),
        Optional.empty(),
        "");
  }
}
