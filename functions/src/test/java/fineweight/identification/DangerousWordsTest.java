package fineweight.identification;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Words that can change what a piece is worth never leave its figure without a warning. */
class DangerousWordsTest {
  private static final List<String> GOOD =
      List.of(
          "1964-D quarter BU",
          "1921 Morgan dollar",
          "1945 mercury dime",
          "1964 Kennedy half",
          "1942 walking liberty half",
          "1943-P war nickel",
          "1904 $20 Liberty",
          "1912 sovereign",
          "1986 silver eagle",
          "GB 1916 florin",
          "1958 Canadian half dollar",
          "5 Mark 1908 Preußen",
          "Nederland 1 gulden 1956");

  private static final List<String> DANGEROUS =
      List.of(
          "copy",
          "replica",
          "fake",
          "counterfeit",
          "forgery",
          "reproduction",
          "cast",
          "tribute",
          "facsimile",
          "plated",
          "gold plated",
          "silver plated",
          "gilt",
          "gilded",
          "vermeil",
          "layered",
          "gold filled",
          "clad",
          "nickel silver",
          "german silver",
          "pewter",
          "brass",
          "copper",
          "zinc",
          "aluminum",
          "steel",
          "lead",
          "base metal",
          "not silver or gold",
          "proof",
          "W",
          "wheat",
          "error",
          "mule",
          "pattern",
          "planchet",
          "on dime planchet",
          "struck on cent planchet",
          "off metal",
          "blank",
          "ring",
          "coin ring",
          "bezel",
          "pendant",
          "brooch",
          "mounted",
          "soldered",
          "cufflink",
          "money clip",
          "love token",
          "hobo",
          "cut",
          "cut in half",
          "fragment",
          "clipped",
          "holed",
          "drilled",
          "plugged",
          "corroded",
          "melted",
          "elongated",
          "encased",
          "token",
          "medal",
          "bar",
          "round",
          "banknote",
          "certificate",
          "set",
          "lot",
          "bag",
          "tube",
          "maybe",
          "doubtful",
          "unverified",
          "?",
          "sticks to a magnet",
          ".375",
          "8k",
          "platinum",
          "painted",
          "ancient");

  @Test
  void noDangerousWordLeavesAPlainAnswer() {
    List<String> silent = new ArrayList<>();
    for (String line : GOOD) {
      assertThat(Answered.to(line).kind()).as(line).isEqualTo("one");
      assertThat(Answered.to(line).isFlagged()).as(line + Answered.to(line).said()).isFalse();
      for (String word : DANGEROUS) {
        for (String text : List.of(line + ", " + word, line + " " + word, word + " " + line)) {
          Answered got = Answered.to(text);
          boolean figure = got.kind().equals("one") && got.pieces().isPresent();
          if (figure && !got.isFlagged()) {
            silent.add(text + ": " + got.said());
          }
        }
      }
    }
    System.out.println(
        "dangerous words: "
            + DANGEROUS.size()
            + " words in "
            + GOOD.size()
            + " lines, silent "
            + silent.size());
    assertThat(silent).isEmpty();
    assertThat(DANGEROUS).hasSizeGreaterThanOrEqualTo(60);
  }
}
