package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.FieldRole;
import fineweight.clue.Quantity;
import fineweight.clue.passage.Amount;
import fineweight.clue.passage.Passage;
import fineweight.clue.word.NumberText;
import fineweight.clue.word.Word;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads quantities in rolls and in face value: "2 rolls", "roll of", "$5 face", "face $5". */
final class RollsAndFace {
  private static final Set<String> FACE =
      Set.of("face", "fv", "facevalue", "nominal", "nominalwert", "nennwert");
  private static final Set<String> ROLL =
      Set.of("roll", "rolle", "rouleau", "rol", "rollo", "rotolo");
  private static final Set<String> ROLLS =
      Set.of("rolls", "rollen", "rouleaux", "rollos", "rotoli");
  private static final Set<String> PART =
      Set.of("half", "partial", "part", "short", "halbe", "halve", "demi", "most");

  private final Passage passage;

  private RollsAndFace(Passage passage) {
    this.passage = passage;
  }

  static Optional<Clue<Quantity>> read(List<Passage> passages) {
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.COUNT
          || (passage.role().isText() && passage.role() != FieldRole.NOTES)) {
        Optional<Clue<Quantity>> found = new RollsAndFace(passage).find();
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Clue<Quantity>> find() {
    for (int i = 0; i < passage.size(); i++) {
      if (passage.isTaken(i)) {
        continue;
      }
      String word = passage.word(i).text();
      if (FACE.contains(word)) {
        Optional<Clue<Quantity>> face = face(i);
        if (face.isPresent()) {
          return face;
        }
      }
      if (ROLL.contains(word) || ROLLS.contains(word)) {
        return Optional.of(rolls(i));
      }
    }
    return bag();
  }

  private Clue<Quantity> rolls(int at) {
    int before = passage.isSign(at - 1, "-") ? at - 2 : at - 1;
    if (before >= 0 && PART.contains(passage.word(before).text())) {
      passage.take(before, at + 1);
      String words = passage.raw(before, at + 1);
      return new Clue<>(
          new Quantity.Unusable("how many pieces are in the \"" + words + "\"?"),
          words,
          passage.role());
    }
    Optional<Amount> amount =
        Amount.before(passage, at)
            .filter(found -> ROLLS.contains(passage.word(at).text()) || isOne(found))
            .filter(found -> found.isWhole() && found.value().signum() > 0)
            .filter(found -> found.value().compareTo(new BigDecimal("1000")) < 0);
    int from = amount.map(Amount::start).orElse(at);
    passage.take(from, at + 1);
    return new Clue<>(
        new Quantity.Rolls(amount.map(found -> found.value().longValueExact()).orElse(1L)),
        passage.raw(from, at + 1),
        passage.role());
  }

  private static boolean isOne(Amount amount) {
    return amount.value().compareTo(BigDecimal.ONE) == 0;
  }

  private Optional<Clue<Quantity>> face(int at) {
    int end = passage.matches(at + 1, "value|val") ? at + 2 : at + 1;
    boolean before = passage.isSign(at - 2, "$") && amount(at - 1).isPresent();
    if (before) {
      return faceClue(amount(at - 1), at - 2, end);
    }
    int sign = passage.matches(end, "of|:|=") ? end + 1 : end;
    return passage.isSign(sign, "$") && amount(sign + 1).isPresent()
        ? faceClue(amount(sign + 1), at, sign + 2)
        : Optional.empty();
  }

  private Optional<BigDecimal> amount(int at) {
    return passage
        .at(at)
        .filter(Word::isNumber)
        .flatMap(number -> NumberText.read(number.text()))
        .filter(number -> number.signum() > 0);
  }

  private Optional<Clue<Quantity>> faceClue(Optional<BigDecimal> amount, int from, int end) {
    passage.take(from, end);
    return amount.map(
        value -> new Clue<>(new Quantity.FaceValue(value), passage.raw(from, end), passage.role()));
  }

  /** "$1000 bag": the face value of what is in it. */
  private Optional<Clue<Quantity>> bag() {
    for (int i = 2; i < passage.size(); i++) {
      boolean bag = passage.matches(i, "bags?") && passage.isSign(i - 2, "$");
      if (bag && !passage.isTaken(i - 1) && amount(i - 1).isPresent()) {
        return faceClue(amount(i - 1), i - 2, i + 1);
      }
    }
    return Optional.empty();
  }
}
