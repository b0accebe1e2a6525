package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.clue.Dating;
import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A column of years that says again what the description says changes no answer. */
class RepeatedYearTest {
  @Test
  void theYearInItsOwnColumnTooIsTheSameCoin() {
    List<String> changed = new ArrayList<>();
    int compared = 0;
    for (DescriptionCase each : DescriptionCase.all()) {
      Answered alone = Answered.to(each.text());
      Dating dating = alone.clues().dating();
      boolean oneYear =
          dating.kind() == Dating.Kind.YEARS
              && dating.years().size() == 1
              && each.text().contains(dating.years().get(0).toString());
      if (oneYear && alone.kind().equals("one")) {
        compared++;
        Answered both =
            Answered.to(
                List.of(
                    new Field(FieldRole.DESCRIPTION, each.text()),
                    new Field(FieldRole.YEAR, dating.years().get(0).toString())));
        // To ask is allowed, another coin or none is not.
        if (!both.standards().containsAll(alone.standards())) {
          changed.add(each.text() + ": " + alone.said() + " became " + both.said());
        }
      }
    }
    assertThat(compared).isGreaterThan(150);
    assertThat(changed).isEmpty();
  }
}
