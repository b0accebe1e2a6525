package fineweight.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.sheet.function.Argument;
import fineweight.sheet.function.Outcome;
import fineweight.sheet.function.SheetFunction;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class SheetFunctionsProperties {
  /** Whatever stands in the cells, something comes back. */
  @Property(tries = 400)
  void nothingInACellMakesAFunctionFail(
      @ForAll("functions") SheetFunction function, @ForAll("calls") List<Argument> arguments) {
    Outcome outcome = function.evaluate(arguments);
    assertThat(outcome).isNotNull();
    if (arguments.size() < function.needed() || arguments.size() > function.parameters().size()) {
      assertThat(outcome).isEqualTo(Outcome.text("the arguments are " + function.signature()));
    }
  }

  @Provide
  Arbitrary<SheetFunction> functions() {
    return Arbitraries.of(SheetFunctions.all());
  }

  private static Arbitrary<Argument> single() {
    return Arbitraries.oneOf(
        Arbitraries.of(
                "1964 half dollar",
                "1967 10 cents Canada",
                "silver",
                "XAU=2500; XAG=30",
                "g",
                "ozt",
                "roll",
                "$5 face",
                "Ag 900; Cu 100",
                "2%",
                "",
                "12.5 up to 1000; 9",
                "us-half-1964-kennedy",
                "copy",
                "1 oz gold bar",
                "999999999999999999 rolls")
            .map(Argument.Text::new),
        Arbitraries.strings().ofMaxLength(12).map(Argument.Text::new),
        Arbitraries.bigDecimals()
            .between(new BigDecimal("-1e12"), new BigDecimal("1e12"))
            .map(Argument.Number::new),
        Arbitraries.of("0", "1", "30", "0.02", "1e308", "-1e308", "1e-308", "1964")
            .map(text -> new Argument.Number(new BigDecimal(text))),
        Arbitraries.just(Argument.LEFT_OUT));
  }

  @Provide
  Arbitrary<List<Argument>> calls() {
    Arbitrary<Argument> single = single();
    Arbitrary<Argument> area =
        single.list().ofSize(2).list().ofMinSize(1).ofMaxSize(3).map(Argument.Area::new);
    return Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(4, single), net.jqwik.api.Tuple.of(1, area))
        .list()
        .ofMaxSize(8);
  }
}
