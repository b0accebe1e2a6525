package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import fineweight.clue.Field;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.reading.ClueReader;
import fineweight.metal.Metal;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.StringLength;

/** What must hold for every description, however it is written. */
class ReadingProperties {
  private static final ClueReader READER = new ClueReader(Lexicon.standard());

  /** Descriptions made of parts that do not depend on each other's place. */
  private static final List<List<String>> LINES =
      List.of(
          List.of("1964-D", "quarter", "BU", "Washington"),
          List.of("1921", "Morgan dollar", "cleaned", "AU"),
          List.of("1942", "nickel", "Jefferson", "XF"),
          List.of("1853", "half dime", "no arrows", "VG"),
          List.of("1976-S", "Ike dollar", "silver"),
          List.of("1916", "florin", "GB", "VF"),
          List.of("1935", "Switzerland", "5 francs", "silver"),
          List.of("1967", "Nederland", "1 gulden", "zilver"),
          List.of("1904", "$20", "Liberty", "gold"),
          List.of("1908", "5 Mark", "Preußen", "ss"),
          List.of("1996-S", "proof", "dime", "Roosevelt"),
          List.of("1968", "Canada", "10 cents"),
          List.of("2012", "silver eagle", "1 oz"));

  @Provide
  Arbitrary<List<String>> lines() {
    return Arbitraries.of(LINES);
  }

  @Provide
  Arbitrary<String> words() {
    return Arbitraries.of(
        "nice",
        "toned",
        "silver",
        "gold",
        "proof",
        "clad",
        "nickel",
        "copper",
        "S",
        "1943",
        "Morgan",
        "dime",
        "half",
        "Canada",
        "GB",
        "copy",
        "plated",
        "zilver",
        "oro",
        "wheat",
        "40%",
        ".999",
        "sterling",
        "14k",
        "war",
        "peace",
        "kennedy",
        "old",
        "grandpa's",
        "key date",
        "5",
        "mark",
        "franc",
        "W",
        "error",
        "arrows",
        "trade",
        "large",
        "xyzzy");
  }

  @Property(tries = 300)
  void theOrderOfIndependentWordsDoesNotMatter(
      @ForAll("lines") List<String> line, @ForAll Random random) {
    List<String> shuffled = new ArrayList<>(line);
    Collections.shuffle(shuffled, random);
    assertSame(String.join(", ", line), String.join(", ", shuffled));
  }

  @Property(tries = 300)
  void caseOfWordsDoesNotMatterButForMintLettersAndGrades(@ForAll("lines") List<String> line) {
    String text = String.join(" ", line);
    assertSame(text, text.toUpperCase(Locale.ROOT));
  }

  @Property(tries = 300)
  void punctuationAndSpacingDoNotMatter(
      @ForAll("lines") List<String> line, @ForAll("separators") String separator) {
    assertSame(String.join(" ", line), String.join(separator, line));
  }

  @Provide
  Arbitrary<String> separators() {
    return Arbitraries.of(", ", " - ", " | ", ";", "  ", " . ", "\t", "\u00a0", " / ", " , ");
  }

  @Property(tries = 700)
  void anAddedWordNeverTurnsAQuestionIntoAnotherMetalSilently(
      @ForAll("lines") List<String> line, @ForAll("words") String word) {
    Answered before = Answered.to(String.join(" ", line));
    Answered after = Answered.to(String.join(" ", line) + " " + word);
    if (before.kind().equals("ask") && after.kind().equals("one")) {
      boolean offered =
          before.standards().stream()
              .anyMatch(
                  standard ->
                      near(
                          standard.fineContent().of(mainMetal(after)).grams(),
                          after.content().of(mainMetal(after)).grams()));
      assertThat(offered || after.isFlagged())
          .as(line + " + " + word + ": " + before.said() + " -> " + after.said())
          .isTrue();
    }
    if (before.kind().equals("one") && after.kind().equals("one")) {
      boolean same =
          near(
              before.content().of(mainMetal(before)).grams(),
              after.content().of(mainMetal(before)).grams());
      boolean plain = !after.isFlagged();
      assertThat(same || !plain || after.clues().country().isPresent())
          .as(line + " + " + word + ": " + before.said() + " -> " + after.said())
          .isTrue();
    }
  }

  private static Metal mainMetal(Answered answered) {
    return answered.content().masses().keySet().stream()
        .filter(Metal::isPrecious)
        .max((one, other) -> answered.content().of(one).compareTo(answered.content().of(other)))
        .orElse(Metal.SILVER);
  }

  private static void assertSame(String one, String other) {
    Answered first = Answered.to(one);
    Answered second = Answered.to(other);
    assertThat(second.kind()).as(one + " against " + other + second.said()).isEqualTo(first.kind());
    assertThat(second.standards()).as(other).isEqualTo(first.standards());
    assertThat(second.pieces()).as(other).isEqualTo(first.pieces());
  }

  @Property(tries = 120)
  void nothingThatCanBeWrittenMakesItFail(@ForAll @StringLength(max = 10_000) String text) {
    for (FieldRole role : FieldRole.values()) {
      assertThat(READER.read(List.of(new Field(role, text)))).isNotNull();
    }
    assertThat(Answered.to(text)).isNotNull();
  }

  @Property(tries = 120)
  void nothingMadeOfItsOwnWordsMakesItFail(@ForAll("jumbles") String text) {
    for (FieldRole role : FieldRole.values()) {
      Answered.to(List.of(new Field(role, text), new Field(FieldRole.DENOMINATION, text)));
    }
    assertThat(Answered.to(text)).isNotNull();
  }

  @Provide
  Arbitrary<String> jumbles() {
    Arbitrary<String> piece =
        Arbitraries.of(
            "19",
            "64",
            "1964",
            "-",
            "/",
            "1",
            "2",
            "½",
            "$",
            "£",
            "oz",
            "silver",
            "quarter",
            "half",
            "mark",
            "?",
            "x",
            "'",
            "%",
            ".",
            ",",
            "999",
            "g",
            "S",
            "D",
            "roll",
            "face",
            "bag",
            "(",
            ")",
            "of",
            "not",
            "arrows",
            "MCMXC",
            "16xx",
            "#",
            "no",
            "gold",
            "dime",
            "franc",
            "99999999999");
    Arbitrary<String> gap = Arbitraries.of("", " ", "  ");
    return Combinators.combine(piece, gap)
        .as((word, blank) -> word + blank)
        .list()
        .ofMaxSize(60)
        .map(words -> String.join("", words));
  }

  /**
   * Ten times the text takes no more than forty times the processor's time: a reader that took the
   * square would take a hundred times.
   */
  @Example
  void theTimeGrowsWithTheLengthOfTheText() {
    for (String unit :
        List.of(
            "1964 quarter silver ",
            "64 ",
            "half ",
            "1/2 ",
            "(((",
            "a-",
            "2 1/2 oz ",
            "not ",
            "''",
            "1964-D ",
            "16xx ",
            "x",
            "$5 face ",
            "roll of ",
            "nice ")) {
      for (FieldRole role : List.of(FieldRole.DESCRIPTION, FieldRole.YEAR, FieldRole.COUNT)) {
        long large = best(role, unit.repeat(10_000 / unit.length()));
        long small = best(role, unit.repeat(1000 / unit.length()));
        assertThat(large).as(unit + role).isLessThan(Math.max(small, 200_000) * 40);
      }
    }
  }

  private static long best(FieldRole role, String text) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long best = Long.MAX_VALUE;
    for (int i = 0; i < 9; i++) {
      long start = threads.getCurrentThreadCpuTime();
      READER.read(List.of(new Field(role, text)));
      best = Math.min(best, threads.getCurrentThreadCpuTime() - start);
    }
    return best;
  }

  /** Near enough to be the same metal. */
  private static boolean near(BigDecimal one, BigDecimal other) {
    return one.subtract(other).abs().compareTo(one.multiply(new BigDecimal("0.005"))) <= 0;
  }
}
