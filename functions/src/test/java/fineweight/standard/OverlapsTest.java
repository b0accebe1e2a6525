package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.standard.Overlaps.Overlap;
import java.io.StringReader;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class OverlapsTest {
  @Test
  void findsTwoRowsThatClaimTheSameCoin() {
    List<CoinStandard> rows =
        rows("a,1900-1905,,,,", "b,1905-1910,,,,", "c,1911,,,,", "d,1900-1911,D,,,");
    assertThat(ids(Overlaps.among(rows)))
        .containsExactly("a b 1905", "a d 1900", "b d 1905", "c d 1911");
  }

  @Test
  void differentMintMarksDoNotOverlap() {
    assertThat(Overlaps.among(rows("a,1900,P (none),,,", "b,1900,D; S (1901),,,"))).isEmpty();
    assertThat(Overlaps.among(rows("a,1901,P (none); S,,,", "b,1901,D; S (1901),,,"))).hasSize(1);
    assertThat(Overlaps.among(rows("a,1901,P (none),,,", "b,1901,M (none),,,"))).hasSize(1);
  }

  @Test
  void aWordInOneOfThemTellsThemApart() {
    assertThat(Overlaps.among(rows("a,1900,,,,arrows", "b,1900,,,,"))).isEmpty();
    assertThat(Overlaps.among(rows("a,1900,,,proof,", "b,1900,,,,"))).isEmpty();
    assertThat(Overlaps.among(rows("a,1900,,,,arrows", "b,1900,,,,arrows"))).hasSize(1);
  }

  @Test
  void aVariantMustStandInBothOfThem() {
    assertThat(Overlaps.among(rows("a,1900,,thick,,", "b,1900,,thin,,"))).isEmpty();
    assertThat(Overlaps.among(rows("a,1900,,thick,,", "b,1900,,,,"))).hasSize(1);
  }

  @Test
  void distinctionsLimitedToOtherYearsDoNotCount() {
    assertThat(
            ids(
                Overlaps.among(
                    rows("a,1853-1873,,1853: arrows,,1853: arrows", "b,1853-1873,,1853: none,,"))))
        .containsExactly("a b 1854");
  }

  @Test
  void openEndsMeet() {
    assertThat(ids(Overlaps.among(rows("a,1990-,,,,", "b,2010-,,,,")))).containsExactly("a b 2010");
  }

  /** Pairs that nothing tells apart are allowed only with a reason. */
  @Test
  void theCatalogueHoldsNoOtherOverlapsThanTheAllowedOnes() {
    TreeSet<String> allowed =
        ResourceTable.rowsOf("allowed-overlaps-americas.csv", "allowed-overlaps-eurasia.csv")
            .stream()
            .filter(row -> !row.get("reason").isBlank())
            .map(row -> row.get("first") + " " + row.get("second"))
            .collect(Collectors.toCollection(TreeSet::new));
    TreeSet<String> found =
        Overlaps.among(Standards.catalogue().all()).stream()
            .map(overlap -> overlap.first().id() + " " + overlap.second().id())
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(found).isEqualTo(allowed);
  }

  private static List<String> ids(List<Overlap> overlaps) {
    return overlaps.stream()
        .map(found -> found.first().id() + " " + found.second().id() + " " + found.year())
        .toList();
  }

  /** Rows of id, years, mints, variant, only_if, tells; the rest is the same for all. */
  private static List<CoinStandard> rows(String... rows) {
    StringBuilder text = new StringBuilder(String.join(",", StandardFile.COLUMNS)).append('\n');
    for (String row : rows) {
      String[] f = row.split(",", -1);
      text.append(
          String.join(
              ",",
              f[0],
              "XX",
              "one",
              "1",
              "XXX",
              "",
              f[1],
              f[2],
              f[3],
              f[4],
              f[5],
              "Ag 900; Cu 100",
              "10",
              "",
              "",
              "",
              "",
              "no",
              "",
              "",
              "memory",
              "\n"));
    }
    return StandardFile.read("rows.csv", new StringReader(text.toString()));
  }
}
