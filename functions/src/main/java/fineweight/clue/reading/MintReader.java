package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.passage.Hit;
import fineweight.clue.passage.Passage;
import fineweight.clue.word.Word;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the mint mark. */
final class MintReader {
  private static final Pattern NO_MINT = Pattern.compile("[-–—]+|0");
  private static final Pattern LETTERS = Pattern.compile("\\p{L}{1,3}[*.°+]?");
  private static final Pattern ANY_LETTER = Pattern.compile("p|d|s|o|cc|w|c|a|f|g|j|h|kn|b");
  private static final Pattern USUAL_LETTER = Pattern.compile("p|d|s|o|cc|w");
  private static final Pattern MINT_WORD = Pattern.compile("mint|mintmark|mm");
  private static final Pattern YEAR_DIGITS = Pattern.compile("\\d{2}|\\d{4}");

  private MintReader() {}

  static Optional<Clue<String>> read(List<Passage> passages) {
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.MINT) {
        return mintColumn(passage);
      }
    }
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.YEAR || passage.role().isText()) {
        Optional<Clue<String>> letter = mintInText(passage);
        if (letter.isPresent()) {
          return letter;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Clue<String>> mintColumn(Passage passage) {
    passage.take(0, passage.size());
    String text = passage.text().strip();
    Optional<Clue<String>> named = mintName(passage);
    if (named.isPresent()) {
      return named;
    }
    if (NO_MINT.matcher(text).matches()) {
      return Optional.of(new Clue<>("", text, FieldRole.MINT));
    }
    boolean letters = LETTERS.matcher(text).matches();
    return letters
        ? Optional.of(
            new Clue<>(
                text.toUpperCase(Locale.ROOT).replaceAll("[*.°+]", ""), text, FieldRole.MINT))
        : Optional.empty();
  }

  private static Optional<Clue<String>> mintName(Passage passage) {
    for (Hit hit : passage.hits()) {
      Optional<Meaning.MintName> name = hit.meaning(Meaning.MintName.class);
      if (name.isPresent()) {
        passage.take(hit.at(), hit.end());
        return Optional.of(
            new Clue<>(name.get().letters(), passage.raw(hit.at(), hit.end()), passage.role()));
      }
    }
    return Optional.empty();
  }

  /**
   * A letter behind the date ("1964-D", "43P", "1921 S"), "S mint", a capital that opens a remark
   * ("S, proof") or follows what the coin is ("1976 half dollar S").
   */
  private static Optional<Clue<String>> mintInText(Passage passage) {
    for (int i = 0; i < passage.size(); i++) {
      if (!ANY_LETTER.matcher(passage.word(i).text()).matches()) {
        continue;
      }
      boolean usual = USUAL_LETTER.matcher(passage.word(i).text()).matches();
      boolean afterDate = isAfterDate(passage, i) && (usual || passage.word(i).isCapitals());
      boolean capital = passage.word(i).isCapitals() && !passage.isTaken(i);
      boolean spelled =
          passage.at(i + 1).filter(word -> MINT_WORD.matcher(word.text()).matches()).isPresent();
      boolean opens =
          capital
              && i == 0
              && (passage.size() == 1 || passage.isSign(1, ",") || passage.isSign(1, "-"));
      boolean follows =
          capital
              && passage.matches(i, "p|d|s|o|cc")
              && isAfterName(passage, i)
              && ends(passage, i);
      if (!passage.isTaken(i) && (afterDate || spelled || opens || follows)) {
        passage.take(i, i + 1);
        return Optional.of(
            new Clue<>(
                passage.word(i).text().toUpperCase(Locale.ROOT),
                passage.word(i).raw(),
                passage.role()));
      }
    }
    return mintName(passage);
  }

  /** Behind the name of a coin or type, with or without a comma. */
  private static boolean isAfterName(Passage passage, int at) {
    int end = passage.isSign(at - 1, ",") ? at - 1 : at;
    return passage.hits().stream()
        .filter(hit -> hit.end() == end)
        .anyMatch(
            hit ->
                hit.meaning(Meaning.Coin.class).isPresent()
                    || hit.meaning(Meaning.Type.class).isPresent());
  }

  /** Whether the letter is not the first of a name: a grade or the like may follow, or nothing. */
  private static boolean ends(Passage passage, int at) {
    return at + 1 == passage.size()
        || passage.matches(at + 1, "[,;(/]|\\d+")
        || passage.hits().stream()
            .filter(hit -> hit.at() == at + 1)
            .anyMatch(
                hit ->
                    hit.meaning(Meaning.GradeName.class).isPresent()
                        || hit.meaning(Meaning.Mark.class).isPresent());
  }

  private static boolean isAfterDate(Passage passage, int at) {
    int before = passage.isSign(at - 1, "-") ? at - 2 : at - 1;
    Optional<Word> number = passage.at(before).filter(Word::isNumber);
    boolean date =
        number.isPresent()
            && passage.isTaken(before)
            && YEAR_DIGITS.matcher(number.get().text()).matches();
    boolean touching = date && at - 1 >= 0 && passage.word(at).touches(passage.word(at - 1));
    return date && (touching || passage.word(at).isCapitals());
  }

  /** How many mint letters stand in a list behind one date: "1943 P, D, S" has three. */
  static int lettersListed(List<Passage> passages) {
    int most = 0;
    for (Passage passage : passages) {
      for (int i = 0; i < passage.size() && passage.role().isText(); i++) {
        if (passage.isTaken(i) && passage.matches(i, "\\d{4}|\\d{2}")) {
          most = Math.max(most, lettersAfter(passage, i + 1));
        }
      }
    }
    return most;
  }

  private static int lettersAfter(Passage passage, int from) {
    int letters = 0;
    int at = passage.isSign(from, "-") || passage.isSign(from, "(") ? from + 1 : from;
    while (passage.matches(at, "p|d|s|o|cc") && passage.word(at).isCapitals()) {
      letters++;
      boolean separated = passage.matches(at + 1, "[,&+]|and");
      at += separated ? 2 : 1;
    }
    if (letters > 1) {
      passage.take(from, at);
    }
    return letters;
  }
}
