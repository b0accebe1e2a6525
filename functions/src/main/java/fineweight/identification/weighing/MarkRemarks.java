package fineweight.identification.weighing;

import fineweight.clue.Clue;
import fineweight.clue.Clues;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a remark about the piece means for the figure of its standard. */
final class MarkRemarks {
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
    SENTENCES.put("not-gold", "the words name a golden alloy that holds no gold");
    SENTENCES.put("plated-lead", "the coin's own plating is part of its standard");
  }

  private MarkRemarks() {}

  static void add(Clues clues, Working working) {
    for (Clue<String> mark : clues.condition().marks()) {
      String sentence = SENTENCES.get(mark.value());
      if (sentence != null) {
        working.remark("\"" + mark.words() + "\": " + sentence);
      }
    }
  }
}
