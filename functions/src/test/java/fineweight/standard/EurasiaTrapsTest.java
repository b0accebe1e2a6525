package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fineweight.metal.Metal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Coins of one date and two standards must be told apart, or a question must stand ready. */
class EurasiaTrapsTest {
  private static final Standards STANDARDS = EurasiaFiles.standards();
  private static final List<NamedCsvRecord> QUESTIONS = EurasiaFiles.rows("questions-eurasia.csv");
  private static final BigDecimal HALF_A_PER_CENT = new BigDecimal("0.005");

  @ParameterizedTest
  @CsvSource({
    "de-10e-2011-2015-625, de-10e-2011-2015-cuni, 2013",
    "nl-1g-1954-1967-720, nl-1g-1967-2001-ni, 1967",
    "nl-25c-1848-1945-640, nl-25c-1941-1943-zinc, 1941",
    "fr-1f-1866-1920-835, fr-1f-1920-1928-albronze, 1920",
    "at-5s-1960-1968-640, at-5s-1968-2001-cuni, 1968",
    "se-1kr-union-800, se-1kr-1942-1968-400, 1942",
    "se-1kr-1942-1968-400, se-1kr-1968-1981-clad, 1968",
    "il-250p-1949-h-500, il-250p-1949-cuni, 1949",
    "dd-10m-1968-1976-625, dd-10m-1973-1990-500, 1974",
    "it-1l-1861-1862-900, it-1l-1863-1917-835, 1863",
    "de-5dm-1975-2001-clad, de-5dm-comm-1952-1979-625, 1977"
  })
  void bothStandardsOfTheDateStayInPlayAndAQuestionNamesThem(String one, String other, int year) {
    for (String id : List.of(one, other)) {
      CoinStandard standard = STANDARDS.byId(id).orElseThrow();
      assertThat(standard.issue().years().contains(year)).as(id).isTrue();
      assertThat(standard.distinction().onlyIf()).as(id).isEmpty();
      assertThat(standard.distinction().variant()).as(id).isNotBlank();
    }
    assertThat(asked(one, other)).isTrue();
  }

  @Test
  void noTwoStandardsOfOneFaceValueAndDateDifferInMetalWithoutAQuestion() {
    List<String> silent = new ArrayList<>();
    for (CoinStandard one : STANDARDS.all()) {
      for (CoinStandard other : STANDARDS.of(one.issue().country())) {
        if (one.id().compareTo(other.id()) < 0
            && mayBeTakenForEachOther(one, other)
            && metalDiffers(List.of(one, other))
            && !asked(one.id(), other.id())) {
          silent.add(one.id() + " / " + other.id());
        }
      }
    }
    assertThat(silent).isEmpty();
  }

  @Test
  void aDefaultIsTakenOnlyWhereItCostsLessThanHalfAPerCent() {
    for (NamedCsvRecord question : QUESTIONS) {
      if (!question.getField("take").isEmpty()) {
        List<CoinStandard> standards =
            Arrays.stream(question.getField("standards").split(" "))
                .map(id -> STANDARDS.byId(id).orElseThrow())
                .toList();
        assertThat(question.getField("standards").split(" ")).contains(question.getField("take"));
        assertThat(metalDiffers(standards)).as(question.toString()).isFalse();
      }
    }
  }

  @Test
  void aQuestionForCertainYearsNamesStandardsOfThoseYears() {
    for (NamedCsvRecord question : QUESTIONS) {
      if (!question.getField("years").isEmpty()) {
        Years years = Years.parse(question.getField("years"));
        for (String id : question.getField("standards").split(" ")) {
          assertThat(STANDARDS.byId(id).orElseThrow().issue().years().overlaps(years))
              .as(id + " in " + years)
              .isTrue();
        }
      }
    }
  }

  @Test
  void wordsAreWrittenAsTheReaderOfDescriptionsSeesThem() {
    for (CoinStandard standard : STANDARDS.all()) {
      List<Tell> words = new ArrayList<>(standard.distinction().tells());
      words.addAll(standard.distinction().onlyIf());
      assertThat(words)
          .as(standard.id())
          .allMatch(tell -> tell.phrase().matches("[a-z0-9][a-z0-9 .'-]*"));
    }
  }

  private static boolean mayBeTakenForEachOther(CoinStandard one, CoinStandard other) {
    return one.issue().faceValue().isPresent()
        && one.issue().faceValue().equals(other.issue().faceValue())
        && one.issue().currency().equals(other.issue().currency())
        && one.issue().years().overlaps(other.issue().years())
        && one.distinction().onlyIf().isEmpty()
        && other.distinction().onlyIf().isEmpty();
  }

  /** Whether some precious metal differs by half a per cent or more. */
  private static boolean metalDiffers(List<CoinStandard> standards) {
    for (Metal metal : Metal.values()) {
      if (metal.isPrecious()) {
        List<BigDecimal> masses =
            standards.stream().map(s -> s.fineContent().of(metal).grams()).sorted().toList();
        BigDecimal most = masses.get(masses.size() - 1);
        BigDecimal spread = most.subtract(masses.get(0));
        if (spread.signum() > 0 && spread.compareTo(most.multiply(HALF_A_PER_CENT)) >= 0) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean asked(String one, String other) {
    return QUESTIONS.stream()
        .map(row -> Arrays.stream(row.getField("standards").split(" ")).collect(Collectors.toSet()))
        .anyMatch((Set<String> ids) -> ids.contains(one) && ids.contains(other));
  }
}
