package fineweight.sheet.cases;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.sheet.SheetFunctions;
import fineweight.sheet.function.SheetFunction;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** No function goes with a case or two that happen to come out right. */
class CaseCountTest {
  private static final int FEWEST = 8;

  /** A blank cell, a text and a number below zero are what cells hand over by a slip. */
  @Test
  void everyFunctionIsAskedAboutABlankATextAndANegative() {
    for (SheetFunction function : SheetFunctions.all()) {
      List<String> written =
          SheetCase.all().stream()
              .filter(one -> one.function().equals(function.name()))
              .map(SheetCase::written)
              .toList();
      assertThat(written)
          .as(function.name())
          .anyMatch(arguments -> arguments.contains("BLANK") || arguments.contains("\"\""))
          .anyMatch(arguments -> arguments.matches("(?s).*\"[^\"]+\".*"))
          .anyMatch(arguments -> arguments.matches("(?s)(.*[;{|])?-\\d.*"));
    }
  }

  @Test
  void everyFunctionHasEightCasesAtLeast() {
    Map<String, Integer> counts = new TreeMap<>();
    SheetFunctions.all().forEach(function -> counts.put(function.name(), 0));
    SheetCase.all().forEach(one -> counts.merge(one.function(), 1, Integer::sum));
    assertThat(counts.keySet())
        .containsExactlyInAnyOrderElementsOf(
            SheetFunctions.all().stream().map(SheetFunction::name).toList());
    assertThat(counts)
        .allSatisfy((name, count) -> assertThat(count).isGreaterThanOrEqualTo(FEWEST));
  }
}
