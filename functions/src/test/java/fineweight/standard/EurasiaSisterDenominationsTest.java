package fineweight.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fineweight.quantity.Decimals;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Coins of one system hold precious metal in proportion to their face value, where the law says so
 * (2 francs are twice 1 franc).
 */
class EurasiaSisterDenominationsTest {
  /** Tables print three to five decimals; the smallest coins lose 0.02 % by that. */
  private static final BigDecimal ROUNDING = new BigDecimal("0.0002");

  private static final Standards STANDARDS = EurasiaFiles.standards();

  static Stream<Arguments> systems() {
    return Stream.of(
        Arguments.of(
            "France 900, law of 7 germinal an XI",
            "fr-5f-1795-1889-900 fr-2f-1803-1865-900 fr-1f-1803-1865-900 fr-50c-1803-1863-900"
                + " fr-25c-1803-1848-900 fr-20c-1849-1863-900"),
        Arguments.of(
            "France 835, convention of 1865, art. 4",
            "fr-2f-1866-1920-835 fr-1f-1866-1920-835 fr-50c-1864-1920-835 fr-20c-1864-1889-835"),
        Arguments.of(
            "France gold, convention of 1885, art. II",
            "fr-100f-gold fr-50f-gold fr-20f-gold fr-10f-gold fr-5f-gold fr-40f-1803-1839-gold"),
        Arguments.of(
            "Belgium 835, convention of 1865, art. 4",
            "be-2f-1866-1912-835 be-1f-1866-1918-835 be-50c-1866-1914-835"),
        Arguments.of(
            "Italy 835, convention of 1865, art. 4",
            "it-2l-1863-1917-835 it-1l-1863-1917-835 it-50c-1863-1892-835 it-20c-1863-1867-835"),
        Arguments.of(
            "Italy gold, convention of 1885, art. II",
            "it-100l-gold it-50l-gold it-20l-gold it-10l-gold it-5l-gold"),
        Arguments.of(
            "Switzerland 835, convention of 1865, art. 4",
            "ch-2f-1874-1967-835 ch-1f-1875-1967-835 ch-half-1875-1967-835"),
        Arguments.of(
            "Switzerland gold, convention of 1885, art. II",
            "ch-100f-1925-gold ch-20f-1883-1949-gold ch-10f-1911-1922-gold"),
        Arguments.of(
            "Greece 835, convention of 1885",
            "gr-2d-1868-1911-835 gr-1d-1868-1911-835 gr-50l-1868-1883-835 gr-20l-1874-1883-835"),
        Arguments.of(
            "Greece gold, convention of 1885, art. II",
            "gr-100d-gold gr-50d-gold gr-20d-gold gr-10d-gold gr-5d-gold"),
        Arguments.of(
            "Spain 835, decree of 1868",
            "es-2p-1869-1905-835 es-1p-1869-1905-835 es-50c-1869-1926-835 es-20c-1869-1870-835"),
        Arguments.of("Spain, law of 1864", "es-2e-1865-1868-900 es-1e-1864-1868-900"),
        Arguments.of(
            "German gold, law of 1871", "de-empire-20m-gold de-empire-10m-gold de-empire-5m-gold"),
        Arguments.of(
            "German silver, law of 1873",
            "de-empire-5m-900 de-empire-3m-900 de-empire-2m-900 de-empire-1m-900"
                + " de-empire-half-900 de-empire-50pf-900 de-empire-20pf-900"),
        Arguments.of(
            "Reichsmark of 500, 625 and 900: 2.5 g of silver a mark",
            "de-1rm-1925-1927-500 de-2rm-1925-1931-500 de-3rm-1925-1933-500 de-5rm-1925-1933-500"
                + " de-5rm-1934-1935-900 de-2rm-1934-625"),
        Arguments.of(
            "Thaler, Vienna treaty of 1857",
            "de-vereinsthaler-1857-1871-900 de-2vereinsthaler-1857-1871-900"),
        Arguments.of("Austria, Vienna treaty", "at-2fl-1859-1892-900 at-1fl-1857-1892-900"),
        Arguments.of(
            "Austrian krone gold, 1892",
            "at-100k-1907-1915-gold at-20k-1892-1918-gold at-10k-1892-1912-gold"),
        Arguments.of(
            "Hungarian korona gold, 1892",
            "hu-100k-1907-1908-gold hu-20k-1892-1916-gold hu-10k-1892-1915-gold"),
        Arguments.of("Austrian krone silver 835", "at-2k-1912-1913-835 at-1k-1892-1916-835"),
        Arguments.of("Hungarian korona silver 835", "hu-2k-1912-1914-835 hu-1k-1892-1916-835"),
        Arguments.of("Pengo 640", "hu-1p-1926-1939-640 hu-2p-1929-1939-640 hu-5p-1930-1939-640"),
        Arguments.of("Swedish gold, 1873", "se-20kr-gold se-10kr-gold se-5kr-gold"),
        Arguments.of("Swedish kronor of 800", "se-2kr-union-800 se-1kr-union-800"),
        Arguments.of("Danish gold, 1873", "dk-20kr-gold dk-10kr-gold"),
        Arguments.of("Danish kroner of 800", "dk-2kr-union-800 dk-1kr-union-800"),
        Arguments.of("Norwegian gold, 1875", "no-20kr-gold no-10kr-gold"),
        Arguments.of("Norwegian kroner of 800", "no-2kr-union-800 no-1kr-union-800"),
        Arguments.of("Finnish gold, 1877", "fi-20m-1878-1913-gold fi-10m-1878-1913-gold"),
        Arguments.of(
            "Rouble before 1886", "ru-1r-1810-1885-868 ru-50k-1810-1885-868 ru-25k-1827-1885-868"),
        Arguments.of(
            "Rouble from 1886", "ru-1r-1886-1915-900 ru-50k-1886-1914-900 ru-25k-1886-1901-900"),
        Arguments.of(
            "Small silver of the rouble",
            "ru-20k-1867-1917-500 ru-15k-1867-1917-500 ru-10k-1867-1917-500 ru-5k-1867-1915-500"),
        Arguments.of("Russian gold from 1897", "ru-10r-1898-1911-gold ru-5r-1897-1911-gold"),
        Arguments.of("Soviet silver, 1924", "su-1r-1921-1924-900 su-50k-1921-1927-900"),
        Arguments.of("Yen gold, 1897", "jp-20y-new-gold jp-10y-new-gold jp-5y-new-gold"),
        Arguments.of(
            "Yen gold, 1871",
            "jp-20y-old-gold jp-10y-old-gold jp-5y-old-gold jp-2y-old-gold jp-1y-old-gold"),
        Arguments.of("Gulden, law of 1816", "nl-3g-1817-1832-893 nl-1g-1818-1837-893"),
        Arguments.of(
            "Gulden of 945, laws of 1839 and 1847",
            "nl-2g50-1840-1898-945 nl-1g-1840-1917-945 nl-half-1846-1919-945"),
        Arguments.of(
            "Gulden of 720, law of 1919",
            "nl-2g50-1929-1943-720 nl-1g-1922-1945-720 nl-half-1921-1930-720"),
        Arguments.of("Gulden gold", "nl-10g-1875-1933-gold nl-5g-1912-gold"),
        Arguments.of("Milreis gold", "pt-10000r-gold pt-5000r-gold pt-2000r-gold pt-1000r-gold"),
        Arguments.of(
            "Kurus gold, 1844",
            "tr-500k-1844-1922-gold tr-250k-1844-1922-gold tr-100k-1844-1922-gold"
                + " tr-50k-1844-1922-gold tr-25k-1844-1922-gold"),
        Arguments.of(
            "Egyptian pound",
            "eg-500q-1837-1938-gold eg-100q-1837-1938-gold eg-20q-1837-1938-gold"),
        Arguments.of(
            "Rial, law of 1932",
            "ir-5rial-1931-1936-828 ir-2rial-1931-1936-828 ir-1rial-1931-1936-828"),
        Arguments.of(
            "Piastre of 1885",
            "indochina-1p-1885-1895-900 indochina-50c-1885-1895-900 indochina-20c-1885-1895-900"
                + " indochina-10c-1885-1895-900"),
        Arguments.of(
            "Danzig, 1923", "danzig-5g-1923-1927-750 danzig-2g-1923-750 danzig-1g-1923-750"),
        Arguments.of("Lats", "lv-5l-1929-1932-835 lv-2l-1925-1926-835 lv-1l-1924-835"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("systems")
  void fineMassFollowsTheFaceValue(String system, String ids) {
    String[] sisters = ids.split(" ");
    BigDecimal first = finePerUnit(sisters[0]);
    for (String id : sisters) {
      assertThat(finePerUnit(id))
          .as(system + ": " + id + " against " + sisters[0])
          .isCloseTo(first, within(first.multiply(ROUNDING)));
    }
  }

  private static BigDecimal finePerUnit(String id) {
    CoinStandard standard = STANDARDS.byId(id).orElseThrow();
    BigDecimal fine =
        standard
            .fineContent()
            .of(standard.specification().composition().mainPreciousMetal().orElseThrow())
            .grams();
    return fine.divide(standard.issue().faceValue().orElseThrow(), Decimals.DIVISION);
  }
}
