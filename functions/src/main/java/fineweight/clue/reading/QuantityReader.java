package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.Dating;
import fineweight.clue.FieldRole;
import fineweight.clue.Quantity;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.passage.Hit;
import fineweight.clue.passage.Passage;
import fineweight.clue.word.NumberText;
import fineweight.clue.word.Word;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads how many pieces a row is about. */
final class QuantityReader {
  private static final Pattern PLAIN_COUNT = Pattern.compile("[1-9]\\d{0,3}");

  private static final Pattern COUNT_SIGN = Pattern.compile("(?i)^(x|qty:?|ca\\.?|#)\\s*");
  private static final Pattern UNIT =
      Pattern.compile(
          "(?i)\\s*(x|pcs?\\.?|pieces?|coins?|ea\\.?|each|stk\\.?|st\\.?|stuks?|ex\\.?|st(ü|u)ck|pezzi|pi(è|e)ces?)$");

  private static final Set<String> PIECES =
      Set.of(
          "pcs",
          "pc",
          "pieces",
          "piece",
          "coins",
          "ea",
          "each",
          "stk",
          "stuck",
          "stucke",
          "ex",
          "st",
          "stuks",
          "pezzi",
          "piezas",
          "monedas",
          "munten",
          "munzen",
          "monnaies",
          "monete",
          "count",
          "ct",
          "qty",
          "x");
  private static final Set<String> GROUPS = Set.of("pair", "pairs", "dozen", "couple", "trio");
  private static final BigDecimal MOST = new BigDecimal("1000000");

  private final Passage passage;

  private QuantityReader(Passage passage) {
    this.passage = passage;
  }

  static Clue<Quantity> read(List<Passage> passages, Dating dating) {
    for (Passage passage : passages) {
      if (passage.role() == FieldRole.COUNT) {
        return column(passage);
      }
    }
    for (Passage passage : passages) {
      if (passage.role().isText() && passage.role() != FieldRole.NOTES) {
        Optional<Clue<Quantity>> found = new QuantityReader(passage).inText();
        if (found.isPresent()) {
          return found.get();
        }
      }
    }
    return listed(passages, dating);
  }

  private static Clue<Quantity> column(Passage passage) {
    String text = passage.text().strip();
    passage.take(0, passage.size());
    String digits =
        text.length() > 40
            ? text
            : UNIT.matcher(COUNT_SIGN.matcher(text).replaceAll("")).replaceAll("");
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

  private Optional<Clue<Quantity>> inText() {
    Optional<Clue<Quantity>> words = inLetters();
    if (words.isPresent()) {
      return words;
    }
    long sum = 0;
    List<String> said = new ArrayList<>();
    for (int i = 0; i < passage.size(); i++) {
      if (isCount(i)) {
        boolean firm = isMarkedAsCount(i);
        long number = Long.parseLong(passage.word(i).text());
        sum = firm ? number : sum + number;
        said.add(passage.word(i).raw());
        passage.take(i, i + 1);
        if (firm) {
          break;
        }
      }
    }
    if (sum > 0) {
      return clue(new Quantity.Pieces(sum), String.join(" + ", said));
    }
    return openCount();
  }

  private Optional<Clue<Quantity>> clue(Quantity quantity, String words) {
    return Optional.of(new Clue<>(quantity, words, passage.role()));
  }

  /** "pair of", "a dozen", "three 1921 Morgans", "due pezzi". */
  private Optional<Clue<Quantity>> inLetters() {
    for (Hit hit : passage.hits()) {
      Optional<Meaning.Count> count = hit.meaning(Meaning.Count.class);
      if (count.isEmpty() || !passage.isFree(hit.at(), hit.end())) {
        continue;
      }
      boolean group = GROUPS.contains(passage.word(hit.end() - 1).text());
      int next = passage.matches(hit.end(), "of|de|von|van|di") ? hit.end() + 1 : hit.end();
      boolean opens = hit.at() == 0 || passage.matches(hit.at() - 1, "of|[,;&+(-]|and|a|the");
      if (group || (opens && pieceFollows(next))) {
        passage.take(hit.at(), hit.end());
        return clue(new Quantity.Pieces(count.get().pieces()), passage.raw(hit.at(), hit.end()));
      }
    }
    return Optional.empty();
  }

  private boolean pieceFollows(int at) {
    Optional<Word> next = passage.at(at);
    return next.isPresent()
        && (PIECES.contains(next.get().text())
            || passage.hit(at).filter(Hit::namesCoin).isPresent()
            || (next.get().isNumber() && passage.isTaken(at)));
  }

  private boolean isCount(int at) {
    Word word = passage.word(at);
    boolean plain =
        word.isNumber()
            && !passage.isTaken(at)
            && !passage.isInsidePhrase(at)
            && PLAIN_COUNT.matcher(word.text()).matches();
    return plain && (isMarkedAsCount(at) || isBeforeName(at));
  }

  /** "20 pcs", "x12", "(4)". */
  private boolean isMarkedAsCount(int at) {
    boolean times =
        passage.matches(at - 1, "x|qty|quantity|anzahl|aantal")
            || passage.at(at + 1).filter(after -> PIECES.contains(after.text())).isPresent();
    return times || (passage.isSign(at - 1, "(") && passage.isSign(at + 1, ")"));
  }

  private boolean isBeforeName(int at) {
    long number = Long.parseLong(passage.word(at).text());
    if (number >= 1000) {
      return false;
    }
    int next = passage.isSign(at + 1, "-") ? at + 2 : at + 1;
    boolean leads = at == 0 && passage.size() > 1 && leadsOn(next);
    boolean named =
        passage.hit(next).filter(Hit::namesCoin).isPresent()
            && (passage.at(at - 1).filter(Word::isNumber).isEmpty());
    return leads || named;
  }

  /** A number that opens a description counts what follows: a name, a date, a size. */
  private boolean leadsOn(int next) {
    Optional<Word> word = passage.at(next);
    if (word.isEmpty()) {
      return false;
    }
    boolean measured =
        passage
            .hit(next)
            .filter(
                hit ->
                    hit.all(Meaning.Unit.class).stream()
                        .anyMatch(unit -> DenominationReader.isMassUnit(unit.unit())))
            .isPresent();
    return (word.get().isLetters() && !measured)
        || (word.get().isNumber() && passage.isTaken(next));
  }

  /** "tube of", "partial roll", "some": the number stays open. */
  private Optional<Clue<Quantity>> openCount() {
    for (Hit hit : passage.hits()) {
      boolean open =
          hit.has(Meaning.OpenCount.class)
              && passage.isFree(hit.at(), hit.end())
              && (hit.length() > 1 || passage.matches(hit.end(), "of|von|van|de|di|mit|met"));
      boolean labelled = hit.end() < passage.size() && passage.isTaken(hit.end());
      boolean lot = hit.isMark("lot") && !labelled && (hit.at() == 0 || hit.length() > 1);
      if (open || lot) {
        String words = passage.raw(hit.at(), hit.end());
        passage.take(hit.at(), hit.end());
        return clue(new Quantity.Unusable("\"" + words + "\" does not say how many pieces"), words);
      }
    }
    return Optional.empty();
  }

  /** Several dates in a list, or several mint letters behind one date, are as many pieces. */
  private static Clue<Quantity> listed(List<Passage> passages, Dating dating) {
    boolean years = dating.kind() == Dating.Kind.YEARS || dating.kind() == Dating.Kind.SHORT_YEARS;
    if (years && dating.years().size() > 1) {
      return new Clue<>(
          new Quantity.Pieces(dating.years().size()), dating.words(), FieldRole.DESCRIPTION);
    }
    int letters = years ? MintReader.lettersListed(passages) : 0;
    return letters > 1
        ? new Clue<>(new Quantity.Pieces(letters), dating.words(), FieldRole.DESCRIPTION)
        : new Clue<>(Quantity.ONE, "", FieldRole.COUNT);
  }
}
