package fineweight.identification.weighing;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import fineweight.identification.candidate.Profile;
import fineweight.standard.Distinction;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What a remark about the piece means for the figure of its standard. */
final class MarkRemarks {
  private static final String OTHER_WARE =
      "the figure is that of the coin named; a private piece counts by its own mass and fineness";

  private static final Set<String> HEAPS = Set.of("lot", "bag", "tube", "set", "roll", "plural");

  private static final Map<String, String> SENTENCES = new LinkedHashMap<>();

  static {
    SENTENCES.put(
        "mounted",
        "figures are of the coin alone: mount, solder and loop are not counted, and metal may be missing");
    SENTENCES.put("holed", "figures are as struck: a hole took metal, weigh the piece");
    SENTENCES.put(
        "plugged", "figures are as struck: the plug may be another metal, weigh the piece");
    SENTENCES.put(
        "cut", "figures are of the whole coin as struck: part of it is missing, weigh the piece");
    SENTENCES.put("clipped", "figures are as struck: metal was taken off, weigh the piece");
    SENTENCES.put("corroded", "figures are as struck: corrosion took metal, weigh the piece");
    SENTENCES.put(
        "environmental",
        "figures are as struck: damage by soil or water may have taken metal, weigh the piece");
    SENTENCES.put(
        "worn-slick", "figures are as struck: a coin worn slick may have lost 5 to 10 %, weigh it");
    SENTENCES.put(
        "error", "an error piece may be of another metal or mass: weigh it and have it looked at");
    SENTENCES.put("colored", "paint or enamel is not counted");
    SENTENCES.put("polished", "polishing took a little metal");
    SENTENCES.put("doubtful", "the words doubt it: have the piece looked at");
    SENTENCES.put(
        "cob", "hand-cut coins differ much in mass: the figure is the legal one, weigh the piece");
    SENTENCES.put("damaged", "figures are as struck: if metal is missing, weigh the piece");
    SENTENCES.put("white-metal", "the colour alone does not tell silver from other white metals");
    SENTENCES.put("bar", OTHER_WARE);
    SENTENCES.put("round", OTHER_WARE);
    SENTENCES.put("medal", OTHER_WARE);
    SENTENCES.put(
        "mint-w", "W stands on pieces for collectors since 1984; it is no mark of this coin");
    SENTENCES.put("not-gold", "the words name a golden alloy that holds no gold");
    SENTENCES.put("plated-lead", "the coin's own plating is part of its standard");
  }

  private MarkRemarks() {}

  static void add(Clues clues, Working working) {
    for (Clue<String> mark : clues.condition().marks()) {
      sentence(mark.value(), clues, working)
          .ifPresent(sentence -> working.remark("\"" + mark.words() + "\": " + sentence));
    }
  }

  private static Optional<String> sentence(String kind, Clues clues, Working working) {
    if (kind.equals("proof") || kind.equals("specimen")) {
      return working.open().stream().anyMatch(MarkRemarks::knowsProofs)
          ? Optional.empty()
          : Optional.of("the catalogue has no standard of its own for such pieces of this date");
    }
    if (HEAPS.contains(kind)) {
      return clues.quantity().words().isEmpty()
          ? Optional.of("how many pieces is not said: counted as one")
          : Optional.empty();
    }
    return Optional.ofNullable(SENTENCES.get(kind));
  }

  private static boolean knowsProofs(Profile profile) {
    Distinction distinction = profile.standard().distinction();
    return Stream.concat(distinction.onlyIf().stream(), distinction.tells().stream())
        .anyMatch(tell -> tell.phrase().equals("proof"));
  }
}
