package fineweight.typeset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fineweight.grade.Condition;
import fineweight.standard.CoinStandard;
import fineweight.standard.Issue;
import fineweight.standard.Mints;
import fineweight.standard.Years;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TypeSetFileTest {
  private static final String HEADER = "key,name,country,denomination,standards,years,mints\n";

  private static TypeSet read(String rows) {
    return TypeSetFile.read("mine", "mine.csv", new StringReader(HEADER + rows));
  }

  @Test
  void aCollectorsOwnListWorksWithoutStandardIds() {
    TypeSet set =
        read(
            "m,Morgan,US,Dollar,,1878-1904;1921,\np,Peace,US,dollar,us-dollar-1921-1935-peace,"
                + "1921-1935,D; none\n");
    assertThat(set.placesFor(Coins.piece(Coins.MORGAN, 1881, "S", Condition.UNKNOWN)))
        .extracting(TypeEntry::key)
        .containsExactly("m");
    assertThat(set.placesFor(Coins.piece(Coins.PEACE, 1926, "D", Condition.UNKNOWN)))
        .extracting(TypeEntry::key)
        .containsExactly("p");
    assertThat(set.placesFor(Coins.piece(Coins.PEACE, 1926, "", Condition.UNKNOWN))).hasSize(1);
    assertThat(set.placesFor(Coins.piece(Coins.PEACE, 1926, "S", Condition.UNKNOWN))).isEmpty();
  }

  @Test
  void aBadRowIsNamedByFileAndLine() {
    assertThatThrownBy(() -> read("m,Morgan,US,dollar,,1878-1904,\np,Peace,US,dollar,,soon,\n"))
        .isInstanceOf(TypeSetFileException.class)
        .hasMessageStartingWith("mine.csv, line 3: ")
        .hasMessageContaining("soon")
        .satisfies(
            thrown -> {
              assertThat(((TypeSetFileException) thrown).file()).isEqualTo("mine.csv");
              assertThat(((TypeSetFileException) thrown).line()).isEqualTo(3);
            });
    assertThatThrownBy(() -> read(" ,Morgan,US,dollar,,1878,\n"))
        .isInstanceOf(TypeSetFileException.class)
        .hasMessageContaining("key");
    assertThatThrownBy(() -> read("m,Morgan,US,dollar,,1878,\nm,Peace,US,dollar,,1921,\n"))
        .isInstanceOf(TypeSetFileException.class)
        .hasMessage("mine.csv: the key m stands twice in mine");
  }

  @Test
  void aMissingColumnIsNamed() {
    assertThatThrownBy(
            () -> TypeSetFile.read("mine", "mine.csv", new StringReader("key,name\nm,Morgan\n")))
        .isInstanceOf(TypeSetFileException.class)
        .hasMessage("mine.csv, line 2: the column country is missing");
  }

  @Test
  void aSetByDateAndMintIsMadeFromStandards() {
    TypeSet set = DateAndMintSet.of("Peace dollars", List.of(Coins.PEACE), 2026);
    // Ten dates, three mints each; that not every mint struck every year is the collector's to say.
    assertThat(set.entries()).hasSize(30);
    assertThat(set.placesFor(Coins.piece(Coins.PEACE, 1926, "D", Condition.UNKNOWN)))
        .extracting(TypeEntry::name)
        .containsExactly("1926-D");
    assertThat(set.placesFor(Coins.piece(Coins.PEACE, 1926, "", Condition.UNKNOWN)))
        .extracting(TypeEntry::name)
        .containsExactly("1926-P");
    assertThat(set.placesFor(Coins.piece(Coins.MORGAN, 1921, "", Condition.UNKNOWN))).isEmpty();
  }

  @Test
  void aMarkOfSomeYearsHasItsPlaceInThoseOnly() {
    TypeSet set = DateAndMintSet.of("Morgan dollars", List.of(Coins.MORGAN), 2026);
    assertThat(set.placesFor(Coins.piece(Coins.MORGAN, 1921, "D", Condition.UNKNOWN))).hasSize(1);
    assertThat(set.placesFor(Coins.piece(Coins.MORGAN, 1881, "D", Condition.UNKNOWN))).isEmpty();
    assertThat(set.placesFor(Coins.piece(Coins.MORGAN, 1881, "CC", Condition.UNKNOWN))).hasSize(1);
  }

  @Test
  void aYearWithoutMarksHasAPlaceForPiecesWithoutOne() {
    TypeSet set =
        DateAndMintSet.of(
            "five cents",
            List.of(
                Coins.dollar(
                    "one", "1941-1942", "P (none) (1941); - (none) (1942); D", "Cu 750", "5")),
            2026);
    assertThat(set.entries())
        .extracting(TypeEntry::name)
        .containsExactly("1941-P", "1941-D", "1942", "1942-D");
    assertThat(set.entries().get(2).mints()).containsExactly("");
  }

  @Test
  void datesOfTwoStandardsAreOnePlaceAndOpenRangesEnd() {
    TypeSet shared =
        DateAndMintSet.of(
            "dollars",
            List.of(
                Coins.dollar("one", "2024-", "", "Ag 900", "26.73"),
                Coins.dollar("two", "2025", "", "Cu 900", "8.1")),
            2026);
    assertThat(shared.entries())
        .extracting(TypeEntry::name)
        .containsExactly("2024", "2025", "2026");
    assertThatThrownBy(() -> DateAndMintSet.of("none", List.of(), 2026))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aSetOfTwoDenominationsKeepsThemApart() {
    CoinStandard cent =
        new CoinStandard(
            "cent",
            new Issue(
                "US",
                List.of("cent"),
                Optional.empty(),
                "USD",
                List.of(),
                Years.parse("1921"),
                Mints.ANY),
            Coins.PEACE.distinction(),
            Coins.PEACE.specification(),
            Coins.PEACE.evidence());
    TypeSet set = DateAndMintSet.of("1921", List.of(cent, Coins.MORGAN), 1921);
    assertThat(set.placesFor(Coins.piece(cent, 1921, "", Condition.UNKNOWN)))
        .extracting(TypeEntry::key)
        .containsExactly("cent 1921");
    assertThat(set.placesFor(Coins.piece(Coins.MORGAN, 1921, "S", Condition.UNKNOWN)))
        .extracting(TypeEntry::key)
        .containsExactly("dollar 1921-S");
  }
}
