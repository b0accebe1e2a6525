package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.Denomination;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Face;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.word.NumberText;
import fineweight.clue.word.Word;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads denominations: an amount and a unit, a money sign, or a coin's own name. */
final class DenominationReader {
  private static final Map<String, String> SHARES =
      Map.ofEntries(
          Map.entry("half", "0.5"),
          Map.entry("halbe", "0.5"),
          Map.entry("halber", "0.5"),
          Map.entry("halve", "0.5"),
          Map.entry("demi", "0.5"),
          Map.entry("demie", "0.5"),
          Map.entry("mezza", "0.5"),
          Map.entry("mezzo", "0.5"),
          Map.entry("media", "0.5"),
          Map.entry("medio", "0.5"),
          Map.entry("quarter", "0.25"),
          Map.entry("quart", "0.25"),
          Map.entry("one", "1"),
          Map.entry("ein", "1"),
          Map.entry("eine", "1"),
          Map.entry("een", "1"),
          Map.entry("un", "1"),
          Map.entry("une", "1"),
          Map.entry("two", "2"),
          Map.entry("zwei", "2"),
          Map.entry("twee", "2"),
          Map.entry("deux", "2"),
          Map.entry("due", "2"),
          Map.entry("dos", "2"),
          Map.entry("three", "3"),
          Map.entry("drei", "3"),
          Map.entry("four", "4"),
          Map.entry("five", "5"),
          Map.entry("funf", "5"),
          Map.entry("vijf", "5"),
          Map.entry("cinq", "5"),
          Map.entry("cinco", "5"),
          Map.entry("cinque", "5"),
          Map.entry("ten", "10"),
          Map.entry("zehn", "10"),
          Map.entry("dix", "10"),
          Map.entry("twenty", "20"),
          Map.entry("vingt", "20"),
          Map.entry("fifty", "50"),
          Map.entry("hundred", "100"));

  private static final Map<String, String> SIGNS =
      Map.of("$", "dollar", "£", "pound", "€", "euro", "¥", "yen");

  private static final Set<String> MASS_UNITS =
      Set.of("ounce", "gram", "kilogram", "grain", "pennyweight");

  private final Passage passage;
  private final List<Clue<Denomination>> found = new ArrayList<>();

  private DenominationReader(Passage passage) {
    this.passage = passage;
  }

  static boolean isMassUnit(String unit) {
    return MASS_UNITS.contains(unit);
  }

  /** The denominations of the most trusted field that names one. */
  static List<Clue<Denomination>> read(List<Passage> passages) {
    List<Set<FieldRole>> order =
        List.of(
            Set.of(FieldRole.DENOMINATION),
            Set.of(FieldRole.TYPE, FieldRole.DESCRIPTION),
            Set.of(FieldRole.VARIETY),
            Set.of(FieldRole.NOTES));
    for (Set<FieldRole> roles : order) {
      List<Clue<Denomination>> all = new ArrayList<>();
      for (Passage passage : passages) {
        if (roles.contains(passage.role())) {
          DenominationReader reader = new DenominationReader(passage);
          reader.readAll();
          all.addAll(reader.found);
        }
      }
      if (!all.isEmpty()) {
        return all;
      }
    }
    return List.of();
  }

  private void readAll() {
    for (int i = 0; i < passage.size(); i++) {
      moneySign(i);
      shillings(i);
    }
    for (Passage.Hit hit : passage.hits()) {
      if (passage.isFree(hit.at(), hit.end())) {
        named(hit);
      }
    }
    if (found.isEmpty()) {
      passage.hits().forEach(this::loneUnit);
    }
  }

  /** $5, $2.50, $2 1/2, £1. */
  private void moneySign(int at) {
    String unit = SIGNS.get(passage.word(at).text());
    if (unit == null) {
      return;
    }
    Amount amount = amountAfter(at + 1);
    if (amount != null && !passage.isTaken(at + 1)) {
      boolean faceValue =
          passage.at(amount.end()).filter(word -> word.text().matches("face|fv")).isPresent();
      if (!faceValue) {
        add(at, amount.end(), List.of(new Face.Amount(amount.value(), unit)), Set.of());
      }
    }
  }

  /** 2/- and 2/6 are not split further: shillings. */
  private void shillings(int at) {
    boolean form =
        passage.word(at).text().matches("\\d{1,2}")
            && passage.isSign(at + 1, "/")
            && passage.isSign(at + 2, "-");
    if (form && !passage.isTaken(at)) {
      add(
          at,
          at + 3,
          List.of(new Face.Amount(new BigDecimal(passage.word(at).text()), "shilling")),
          Set.of());
    }
  }

  private void named(Passage.Hit hit) {
    List<Face> faces = new ArrayList<>();
    Set<String> countries = Set.of();
    Amount before = amountBefore(hit.at());
    int from = hit.at();
    for (Meaning.Unit unit : hit.all(Meaning.Unit.class)) {
      if (before != null && !isMassUnit(unit.unit())) {
        faces.add(new Face.Amount(before.value(), unit.unit()));
        from = before.start();
      }
    }
    for (Meaning.Coin coin : hit.all(Meaning.Coin.class)) {
      boolean anAmount = !faces.isEmpty() && from < hit.at();
      if (isMetalHere(hit) || anAmount) {
        continue;
      }
      faces.addAll(coin.faces());
      countries = faces.size() == coin.faces().size() ? coin.countries() : Set.of();
    }
    if (!faces.isEmpty()) {
      add(from, hit.end(), faces, countries);
    }
  }

  /** In "20 pfennig nickel" the nickel is a metal: a denomination stands before it. */
  private boolean isMetalHere(Passage.Hit hit) {
    return passage.isMetal(hit.at()) && !found.isEmpty();
  }

  /** A unit without a number means one: "Mark 1908". Short abbreviations do not count. */
  private void loneUnit(Passage.Hit hit) {
    boolean longEnough = passage.raw(hit.at(), hit.end()).length() >= 3;
    if (!longEnough || !passage.isFree(hit.at(), hit.end()) || passage.role() == FieldRole.NOTES) {
      return;
    }
    List<Face> faces = new ArrayList<>();
    for (Meaning.Unit unit : hit.all(Meaning.Unit.class)) {
      if (!isMassUnit(unit.unit())) {
        faces.add(new Face.Amount(BigDecimal.ONE, unit.unit()));
      }
    }
    if (!faces.isEmpty() && found.isEmpty()) {
      add(hit.at(), hit.end(), faces, Set.of());
    }
  }

  private void add(int from, int to, List<Face> faces, Set<String> countries) {
    found.add(
        new Clue<>(new Denomination(faces, countries), passage.raw(from, to), passage.role()));
    passage.take(from, to);
  }

  /** A number with the words it spans. */
  record Amount(BigDecimal value, int start, int end) {}

  private Amount amountBefore(int at) {
    return amountBefore(passage, at);
  }

  /**
   * The number just before a place: 20, 2.5, 2,50, 1/2, 2 1/2, half, five. Null if there is none or
   * it is taken.
   */
  static Amount amountBefore(Passage passage, int at) {
    int last = passage.isSign(at - 1, "-") || passage.isSign(at - 1, ".") ? at - 2 : at - 1;
    if (last < 0 || passage.isTaken(last)) {
      return null;
    }
    Word word = passage.word(last);
    if (word.isLetters()) {
      String share = SHARES.get(word.text());
      return share == null ? null : new Amount(new BigDecimal(share), last, last + 1);
    }
    if (!word.isNumber()) {
      return null;
    }
    boolean fraction = passage.isSign(last - 1, "/") && isPlain(passage, last - 2);
    if (!fraction) {
      return NumberText.read(word.text())
          .map(value -> new Amount(value, last, last + 1))
          .orElse(null);
    }
    BigDecimal value = quotient(passage.word(last - 2), word);
    if (value == null) {
      return null;
    }
    boolean whole = isPlain(passage, last - 3) && passage.word(last - 3).text().length() <= 3;
    return whole
        ? new Amount(value.add(new BigDecimal(passage.word(last - 3).text())), last - 3, last + 1)
        : new Amount(value, last - 2, last + 1);
  }

  private static boolean isPlain(Passage passage, int at) {
    return at >= 0 && !passage.isTaken(at) && passage.word(at).text().matches("\\d{1,4}");
  }

  private static BigDecimal quotient(Word above, Word below) {
    if (!below.text().matches("\\d{1,3}") || new BigDecimal(below.text()).signum() == 0) {
      return null;
    }
    return new BigDecimal(above.text())
        .divide(new BigDecimal(below.text()), fineweight.quantity.Decimals.DIVISION);
  }

  private Amount amountAfter(int at) {
    Optional<Word> number = passage.at(at).filter(Word::isNumber);
    if (number.isEmpty()) {
      return null;
    }
    if (isPlain(passage, at + 1) && passage.isSign(at + 2, "/") && isPlain(passage, at + 3)) {
      BigDecimal value = quotient(passage.word(at + 1), passage.word(at + 3));
      Optional<BigDecimal> whole = NumberText.read(number.get().text());
      return value == null || whole.isEmpty()
          ? null
          : new Amount(whole.get().add(value), at, at + 4);
    }
    return NumberText.read(number.get().text())
        .map(value -> new Amount(value, at, at + 1))
        .orElse(null);
  }
}
