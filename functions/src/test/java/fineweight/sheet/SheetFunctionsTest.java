package fineweight.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.sheet.cases.CaseArgument;
import fineweight.sheet.cases.SheetCase;
import fineweight.sheet.function.Outcome;
import fineweight.sheet.function.SheetFunction;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SheetFunctionsTest {
  static Collection<SheetCase> cases() {
    return SheetCase.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyCaseComesOutAsTheTableSays(SheetCase one) {
    List<String> shown = shown(answer(one));
    assertThat(shown).hasSameSizeAs(one.expected().cells());
    for (int row = 0; row < shown.size(); row++) {
      assertThat(one.expected().fits(row, shown.get(row)))
          .as(one + " came to " + shown + ", expected " + one.expected().cells())
          .isTrue();
    }
  }

  @Test
  void everyFunctionHasEightCasesAtLeast() {
    Map<String, Long> counts =
        SheetCase.all().stream()
            .collect(Collectors.groupingBy(SheetCase::function, Collectors.counting()));
    for (SheetFunction function : SheetFunctions.all()) {
      assertThat(counts.getOrDefault(function.name(), 0L)).as(function.name()).isGreaterThan(7);
    }
  }

  @Test
  void namesAreUniqueAndLookLikeNoCell() {
    Set<String> names = new HashSet<>();
    for (SheetFunction function : SheetFunctions.all()) {
      assertThat(names.add(function.name())).as(function.name()).isTrue();
      assertThat(function.name()).matches("FINEWEIGHT\\.[A-Z]{4,}");
      assertThat(function.method()).matches("[a-z]+([A-Z][a-z]+)*");
    }
  }

  @Test
  void everyFunctionIsFoundByItsNameInAnyCase() {
    for (SheetFunction function : SheetFunctions.all()) {
      assertThat(SheetFunctions.named(function.name().toLowerCase(java.util.Locale.ROOT)))
          .contains(function);
    }
    assertThat(SheetFunctions.named("FINEWEIGHT.NOSUCH")).isEmpty();
  }

  /** The parameters' names are unique within a function, because they are found by name. */
  @Test
  void parametersHaveNamesOfTheirOwn() {
    for (SheetFunction function : SheetFunctions.all()) {
      assertThat(function.parameters().stream().map(each -> each.name()).toList())
          .as(function.name())
          .doesNotHaveDuplicates();
    }
  }

  private static Outcome answer(SheetCase one) {
    return SheetFunctions.named(one.function())
        .orElseThrow(() -> new AssertionError("no function " + one.function()))
        .evaluate(one.arguments().stream().map(CaseArgument::argument).toList());
  }

  private static List<String> shown(Outcome outcome) {
    List<String> cells = new ArrayList<>();
    if (outcome instanceof Outcome.Area area) {
      area.rows().forEach(row -> cells.addAll(shown(row.get(0))));
    } else if (outcome instanceof Outcome.Number number) {
      cells.add(number.value().toPlainString());
    } else if (outcome instanceof Outcome.Text text) {
      cells.add(text.value());
    } else {
      cells.add(outcome instanceof Outcome.NotAvailable ? "#N/A" : "");
    }
    return cells;
  }
}
