package fineweight.calc;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.uno.Any;
import com.sun.star.uno.Type;
import fineweight.sheet.function.Argument;
import fineweight.sheet.function.Outcome;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class UnoValuesTest {
  @Test
  void argumentsLeftOutAtTheEndAreDropped() {
    assertThat(UnoArguments.of(new Object[] {1.5, Any.VOID, "a", Any.VOID, null}))
        .containsExactly(
            new Argument.Number(new BigDecimal("1.5")), Argument.LEFT_OUT, new Argument.Text("a"));
  }

  @Test
  void aTenthIsATenth() {
    assertThat(UnoArguments.of(new Object[] {0.1, new Any(Type.DOUBLE, 900.0)}))
        .containsExactly(
            new Argument.Number(new BigDecimal("0.1")), new Argument.Number(new BigDecimal("900")));
  }

  @Test
  void anAreaKeepsItsShape() {
    assertThat(UnoArguments.of(new Object[] {new Object[][] {{"a", 1.0}, {"", 2.0}}}))
        .containsExactly(
            new Argument.Area(
                List.of(
                    List.of(new Argument.Text("a"), new Argument.Number(BigDecimal.ONE)),
                    List.of(new Argument.Text(""), new Argument.Number(new BigDecimal("2"))))));
  }

  @Test
  void outcomesBecomeWhatTheOfficeShows() {
    assertThat(UnoOutcomes.value(Outcome.number(new BigDecimal("0.9675")))).isEqualTo(0.9675);
    assertThat(UnoOutcomes.value(Outcome.text("silver"))).isEqualTo("silver");
    assertThat(UnoOutcomes.value(Outcome.BLANK)).isEqualTo("");
    assertThat(UnoOutcomes.value(Outcome.NOT_AVAILABLE)).isSameAs(Any.VOID);
    Object[][] column =
        (Object[][])
            UnoOutcomes.value(
                Outcome.column(List.of(Outcome.number(BigDecimal.TEN), Outcome.NOT_AVAILABLE)));
    assertThat(column[0]).containsExactly(10.0);
    assertThat((Double) column[1][0]).isNaN();
  }
}
