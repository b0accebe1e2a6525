package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.Denomination;
import fineweight.clue.FieldRole;
import fineweight.clue.lexicon.Face;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.passage.Amount;
import fineweight.clue.passage.Hit;
import fineweight.clue.passage.Passage;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads denominations: an amount and a unit, a money sign, or a coin's own name. */
final class DenominationReader {
  private static final Pattern SMALL_NUMBER = Pattern.compile("\\d{1,2}");

  private static final Map<String, String> SIGNS =
      Map.of("$", "dollar", "£", "pound", "€", "euro", "¥", "yen");

  private static final Set<String> MASS_UNITS =
      Set.of("ounce", "gram", "kilogram", "grain", "pennyweight");

  private static final BigDecimal MOST_PIECES = new BigDecimal("1000");

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
    for (Hit hit : passage.hits()) {
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
    Optional<Amount> amount = Amount.after(passage, at + 1);
    if (amount.isPresent() && !passage.isTaken(at)) {
      add(
          at,
          amount.get().end(),
          List.of(new Face.Amount(amount.get().value(), unit)),
          Set.of(),
          Optional.empty());
    }
  }

  /** 2/- and 2/6 are not split further: shillings. */
  private void shillings(int at) {
    boolean form =
        SMALL_NUMBER.matcher(passage.word(at).text()).matches()
            && passage.isSign(at + 1, "/")
            && passage.isSign(at + 2, "-");
    if (form && !passage.isTaken(at)) {
      add(
          at,
          at + 3,
          List.of(new Face.Amount(new BigDecimal(passage.word(at).text()), "shilling")),
          Set.of(),
          Optional.empty());
    }
  }

  private void named(Hit hit) {
    Optional<Amount> before = Amount.before(passage, hit.at());
    List<Face> amounts = before.map(amount -> faces(hit, amount.value())).orElse(List.of());
    if (!amounts.isEmpty()) {
      add(
          before.get().start(),
          hit.end(),
          amounts,
          Set.of(),
          counted(before.get(), faces(hit, BigDecimal.ONE)));
    } else if (hit.has(Meaning.Coin.class) && !isMetalHere(hit)) {
      coin(hit);
    } else {
      unitFirst(hit);
    }
  }

  private void coin(Hit hit) {
    List<Meaning.Coin> coins = hit.all(Meaning.Coin.class);
    List<Face> faces = new ArrayList<>();
    coins.forEach(coin -> faces.addAll(coin.faces()));
    // A florin is a coin of its own and, elsewhere, one gulden.
    faces.addAll(faces(hit, BigDecimal.ONE));
    Set<String> countries = coins.size() == 1 ? coins.get(0).countries() : Set.of();
    add(hit.at(), hit.end(), faces, countries, Optional.empty());
  }

  /** An amount of each unit of money that the phrase may mean. */
  private static List<Face> faces(Hit hit, BigDecimal amount) {
    List<Face> faces = new ArrayList<>();
    for (Meaning.Unit unit : hit.all(Meaning.Unit.class)) {
      if (!isMassUnit(unit.unit())) {
        faces.add(new Face.Amount(amount, unit.unit()));
      }
    }
    return faces;
  }

  /** "3 gulden": three coins of one, where no coin of three exists. */
  private static Optional<Denomination.Counted> counted(Amount amount, List<Face> single) {
    boolean count =
        amount.isWhole()
            && amount.value().compareTo(BigDecimal.ONE) > 0
            && amount.value().compareTo(MOST_PIECES) < 0;
    return count
        ? Optional.of(new Denomination.Counted(amount.value().longValueExact(), single))
        : Optional.empty();
  }

  /** "L. 500", "kr 2", "DM 5": the unit first. */
  private void unitFirst(Hit hit) {
    int at = passage.isSign(hit.end(), ".") ? hit.end() + 1 : hit.end();
    Optional<Amount> after = Amount.after(passage, at);
    boolean plain =
        after.isPresent()
            && passage.hit(after.get().end()).filter(next -> next.has(Meaning.Unit.class)).isEmpty()
            && !passage.isSign(after.get().end(), "%");
    if (!plain) {
      return;
    }
    List<Face> faces = faces(hit, after.get().value());
    if (!faces.isEmpty()) {
      add(hit.at(), after.get().end(), faces, Set.of(), Optional.empty());
    }
  }

  /** In "20 pfennig nickel" the nickel is a metal: a denomination stands before it. */
  private boolean isMetalHere(Hit hit) {
    return passage.isMetal(hit.at()) && !found.isEmpty();
  }

  /** A unit without a number means one: "Mark 1908". Short abbreviations do not count. */
  private void loneUnit(Hit hit) {
    boolean longEnough = passage.raw(hit.at(), hit.end()).length() >= 3;
    if (!longEnough || !passage.isFree(hit.at(), hit.end()) || passage.role() == FieldRole.NOTES) {
      return;
    }
    List<Face> faces = faces(hit, BigDecimal.ONE);
    if (!faces.isEmpty()) {
      hit.all(Meaning.Type.class).forEach(type -> faces.addAll(type.implied()));
    }
    if (!faces.isEmpty() && found.isEmpty()) {
      add(hit.at(), hit.end(), faces, Set.of(), Optional.empty());
    }
  }

  private void add(
      int from,
      int to,
      List<Face> faces,
      Set<String> countries,
      Optional<Denomination.Counted> orCounted) {
    found.add(
        new Clue<>(
            new Denomination(faces, countries, orCounted), passage.raw(from, to), passage.role()));
    passage.take(from, to);
  }
}
