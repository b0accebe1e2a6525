package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.FieldRole;
import fineweight.clue.Quantity;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.word.NumberText;
import fineweight.clue.word.Word;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads how many pieces a row is about. */
final class QuantityReader {
  private static final Set<String> PIECES =
      Set.of(
          "pcs", "pc", "pieces", "piece", "coins", "ea", "each", "stk", "stuck", "ex", "st",
          "stuks", "pezzi", "piezas", "count", "ct", "qty", "x");
  private static final BigDecimal MOST = new BigDecimal("1000000");

  private QuantityReader() {}

  static Clue<Quantity> read(List<Passage> passages) {
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.COUNT) {
        return column(passage);
      }
    }
    for (Passage passage : passages) {
      if (passage.role().isText() && passage.role() != FieldRole.NOTES) {
        Optional<Clue<Quantity>> found = inText(passage);
        if (found.isPresent()) {
          return found.get();
        }
      }
    }
    return new Clue<>(Quantity.ONE, "", FieldRole.COUNT);
  }

  private static Clue<Quantity> column(Passage passage) {
    String text = passage.text().strip();
    Optional<Clue<Quantity>> words = rollsOrFace(passage);
    if (words.isPresent()) {
      passage.take(0, passage.size());
      return words.get();
    }
    passage.take(0, passage.size());
    String digits =
        text.replaceAll("(?i)^(x|qty:?|ca\\.?|#)\\s*", "")
            .replaceAll(
                "(?i)\\s*(x|pcs?\\.?|pieces?|coins?|ea\\.?|each|stk\\.?|st\\.?|stuks?|ex\\.?|st(ü|u)ck|pezzi|pi(è|e)ces?)$",
                "");
    Optional<BigDecimal> number = NumberText.read(digits);
    if (number.isEmpty()) {
      return new Clue<>(
          new Quantity.Unusable("\"" + text + "\" is no number of pieces"), text, FieldRole.COUNT);
    }
    return new Clue<>(pieces(number.get(), text), text, FieldRole.COUNT);
  }

  private static Quantity pieces(BigDecimal number, String text) {
    if (number.signum() < 0) {
      return new Quantity.Unusable("the count " + text + " is negative");
    }
    if (number.signum() == 0) {
      return new Quantity.Unusable("the count is zero");
    }
    if (number.stripTrailingZeros().scale() > 0) {
      return new Quantity.Unusable("the count " + text + " is no whole number");
    }
    if (number.compareTo(MOST) > 0) {
      return new Quantity.Unusable("the count " + text + " is more than a million");
    }
    return new Quantity.Pieces(number.longValueExact());
  }

  private static Optional<Clue<Quantity>> inText(Passage passage) {
    Optional<Clue<Quantity>> special = rollsOrFace(passage);
    if (special.isPresent()) {
      return special;
    }
    for (int i = 0; i < passage.size(); i++) {
      Optional<Long> count = countAt(passage, i);
      if (count.isPresent()) {
        passage.take(i, i + 1);
        return Optional.of(
            new Clue<>(new Quantity.Pieces(count.get()), passage.word(i).raw(), passage.role()));
      }
    }
    return Optional.empty();
  }

  private static Optional<Long> countAt(Passage passage, int at) {
    Word word = passage.word(at);
    if (!word.isNumber() || passage.isTaken(at) || !word.text().matches("[1-9]\\d{0,3}")) {
      return Optional.empty();
    }
    long number = Long.parseLong(word.text());
    boolean times =
        passage.at(at - 1).filter(before -> before.is("x") || before.is("qty")).isPresent()
            || passage.at(at + 1).filter(after -> PIECES.contains(after.text())).isPresent();
    boolean bracketed = passage.isSign(at - 1, "(") && passage.isSign(at + 1, ")");
    boolean leads =
        at == 0
            && passage.size() > 1
            && passage.word(1).isLetters()
            && !MeasureReader.isMeasured(passage, 0);
    boolean lotOf =
        passage.at(at - 1).filter(before -> before.is("of")).isPresent()
            && leadsToName(passage, at + 1);
    boolean beforePlural =
        leadsToName(passage, at + 1)
            && number < 1000
            && passage.at(at - 1).filter(Word::isNumber).isEmpty();
    return times || bracketed || leads || lotOf || beforePlural
        ? Optional.of(number)
        : Optional.empty();
  }

  private static boolean leadsToName(Passage passage, int at) {
    return passage
        .hit(at)
        .filter(
            hit ->
                hit.meaning(Meaning.Coin.class).isPresent()
                    || hit.meaning(Meaning.Type.class).isPresent())
        .isPresent();
  }

  /** "2 rolls", "roll of", "$5 face". */
  private static Optional<Clue<Quantity>> rollsOrFace(Passage passage) {
    for (int i = 0; i < passage.size(); i++) {
      Word word = passage.word(i);
      if (word.text().matches("face|fv|facevalue") && !passage.isTaken(i)) {
        Optional<Clue<Quantity>> face = faceValue(passage, i);
        if (face.isPresent()) {
          return face;
        }
      }
      if (word.text().matches("rolls?|rollen?|rouleaux?") && !passage.isTaken(i)) {
        DenominationReader.Amount before = DenominationReader.amountBefore(passage, i);
        long rolls =
            before != null && before.value().stripTrailingZeros().scale() <= 0
                ? before.value().longValue()
                : 1;
        int from = before != null && rolls > 0 ? before.start() : i;
        passage.take(from, i + 1);
        return Optional.of(
            new Clue<>(
                new Quantity.Rolls(Math.max(1, rolls)), passage.raw(from, i + 1), passage.role()));
      }
    }
    return Optional.empty();
  }

  private static Optional<Clue<Quantity>> faceValue(Passage passage, int at) {
    boolean money = passage.isSign(at - 2, "$");
    Optional<BigDecimal> amount =
        passage.at(at - 1).filter(Word::isNumber).flatMap(number -> NumberText.read(number.text()));
    if (!money || amount.isEmpty() || amount.get().signum() <= 0) {
      return Optional.empty();
    }
    int end = passage.at(at + 1).filter(word -> word.is("value")).isPresent() ? at + 2 : at + 1;
    passage.take(at - 2, end);
    return Optional.of(
        new Clue<>(new Quantity.FaceValue(amount.get()), passage.raw(at - 2, end), passage.role()));
  }
}
