package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The dates of the United States at which a coin's standard changed, each with the year before and
 * after. Source of the dates and signs: the acts and texts named in the catalogue's rows.
 */
class ChangeoversTest {
  /**
   * @param trap what the line is about
   * @param text the description
   * @param answer {@code one}, {@code base}, {@code ask} or {@code none}
   * @param standards those it may be; of several with one metal any passes
   */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "/fineweight/identification/us-changeovers.csv", numLinesToSkip = 1)
  void theDateAndTheSignsDecide(String trap, String text, String answer, String standards) {
    Answered got = Answered.to(text);
    assertThat(got.kind()).as(text + ": " + got.said()).isEqualTo(answer);
    List<String> ids = got.standards().stream().map(s -> s.id()).toList();
    List<String> wanted = standards == null ? List.of() : List.of(standards.split(" "));
    if (answer.equals("ask")) {
      assertThat(ids).as(text).containsAll(wanted);
    } else if (!wanted.isEmpty()) {
      assertThat(ids).as(text).hasSize(1);
      assertThat(wanted).as(text + " " + got.said()).contains(ids.get(0));
    }
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "/fineweight/identification/us-changeovers.csv", numLinesToSkip = 1)
  void aFigureThatIsTakenByDefaultIsSaid(
      String trap, String text, String answer, String standards) {
    Answered got = Answered.to(text);
    boolean severalMetals =
        standards != null
            && Stream.of(standards.split(" "))
                    .map(id -> Answered.STANDARDS.byId(id).orElseThrow().fineContent())
                    .collect(Collectors.toSet())
                    .size()
                > 1;
    if (got.kind().equals("one") && severalMetals) {
      assertThat(got.identification().reasons().remarks()).as(text).isNotEmpty();
    }
  }
}
