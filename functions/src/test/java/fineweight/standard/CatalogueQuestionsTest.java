package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.metal.FineContent;
import fineweight.metal.Metal;
import fineweight.standard.Overlaps.Overlap;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The questions that a person with the coin in hand is asked. */
class CatalogueQuestionsTest {
  private static final BigDecimal HALF_PER_CENT = new BigDecimal("0.005");

  private final Standards catalogue = Standards.catalogue();
  private final List<Map<String, String>> questions =
      ResourceTable.rowsOf("questions-americas.csv", "questions-eurasia.csv");

  @Test
  void everyQuestionNamesKnownStandardsWithOneAnswerEach() {
    for (Map<String, String> question : questions) {
      List<String> ids = ids(question);
      assertThat(ids).as(question.get("question")).hasSizeGreaterThan(1).doesNotHaveDuplicates();
      assertThat(ids).allSatisfy(id -> assertThat(catalogue.byId(id)).as(id).isPresent());
      String[] answers = question.get("answers").split("\\|", -1);
      assertThat(answers).as(question.get("question")).hasSameSizeAs(ids);
      assertThat(answers).allSatisfy(answer -> assertThat(answer).isNotBlank());
      assertThat(question.get("source")).as(question.get("question")).isNotBlank();
      assertThat(question.get("question")).contains("?");
      if (!question.get("years").isEmpty()) {
        assertThat(Years.parse(question.get("years")).first()).isPositive();
      }
    }
  }

  /** A standard is taken without asking only where the others hold nearly the same. */
  @Test
  void aStandardIsTakenByDefaultOnlyWhereItMakesNoDifference() {
    for (Map<String, String> question : questions) {
      String take = question.get("take");
      if (!take.isEmpty()) {
        assertThat(ids(question)).contains(take);
        for (String id : ids(question)) {
          assertThat(differ(standard(take), standard(id)))
              .as("%s by default instead of %s", take, id)
              .isFalse();
        }
      }
    }
  }

  @Test
  void everyPairOfSameDatedStandardsThatHoldDifferentMetalHasAQuestion() {
    List<String> silent = new ArrayList<>();
    for (Overlap pair : Overlaps.sameDated(ofTheAmericas())) {
      boolean asked =
          questions.stream()
              .anyMatch(
                  question ->
                      ids(question).containsAll(List.of(pair.first().id(), pair.second().id())));
      if (!asked && differ(pair.first(), pair.second())) {
        silent.add(pair.first().id() + " " + pair.second().id() + " " + pair.year());
      }
    }
    assertThat(silent).isEmpty();
  }

  /** The rows of the Americas and the Commonwealth; the other half has its own test. */
  private List<CoinStandard> ofTheAmericas() {
    Set<String> ids = new HashSet<>();
    for (String file : ResourceTable.lines("files-americas.txt")) {
      ResourceTable.rows(file).forEach(row -> ids.add(row.get("id")));
    }
    return catalogue.all().stream().filter(standard -> ids.contains(standard.id())).toList();
  }

  @Test
  void sourcesOfQuestionsStandInTheListOfSources() {
    Set<String> known =
        ResourceTable.rowsOf("sources-americas.csv", "sources-eurasia.csv").stream()
            .map(row -> row.get("key"))
            .collect(Collectors.toSet());
    Set<String> unknown = new TreeSet<>();
    for (Map<String, String> question : questions) {
      for (String source : question.get("source").split(";", -1)) {
        String key = source.strip();
        if (key.matches("[A-Z0-9-]+") && !known.contains(key)) {
          unknown.add(key);
        }
      }
    }
    assertThat(unknown).isEmpty();
  }

  private static List<String> ids(Map<String, String> question) {
    return List.of(question.get("standards").split(" ", -1));
  }

  private CoinStandard standard(String id) {
    Optional<CoinStandard> found = catalogue.byId(id);
    return found.orElseThrow(() -> new AssertionError(id));
  }

  /** Whether the precious metal differs by half a per cent of the larger or more. */
  private static boolean differ(CoinStandard first, CoinStandard second) {
    FineContent mine = first.fineContent();
    FineContent theirs = second.fineContent();
    for (Metal metal : Metal.values()) {
      if (metal.isPrecious()) {
        BigDecimal a = mine.of(metal).grams();
        BigDecimal b = theirs.of(metal).grams();
        if (a.subtract(b).abs().compareTo(a.max(b).multiply(HALF_PER_CENT)) > 0) {
          return true;
        }
      }
    }
    return false;
  }
}
