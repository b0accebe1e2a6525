package fineweight.identification;

import fineweight.clue.TypeName;
import fineweight.clue.lexicon.Face;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.word.Phrases;
import fineweight.clue.word.Word;
import fineweight.clue.word.Words;
import fineweight.quantity.Decimals;
import fineweight.standard.CoinStandard;
import fineweight.standard.Issue;
import fineweight.standard.Years;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A standard prepared for comparison with clues: its faces, its size in ounces, the words of its
 * type. Immutable.
 */
final class Profile {
  /** Words of type names that name no single type. */
  private static final Set<String> COMMON =
      Set.of(
          "liberty",
          "large",
          "small",
          "silver",
          "gold",
          "modern",
          "commemorative",
          "commemoratives",
          "later",
          "circulation",
          "proof",
          "types",
          "classic",
          "annual",
          "issue",
          "issues",
          "coinage",
          "states",
          "state",
          "dollar",
          "dollars",
          "crown",
          "shillings",
          "shilling",
          "florin",
          "cents",
          "union",
          "standard",
          "scandinavian",
          "earlier",
          "struck",
          "after",
          "before",
          "half",
          "quarter",
          "bullion",
          "general",
          "fifty",
          "twenty",
          "three",
          "round",
          "incl",
          "years",
          "reign",
          "values",
          "copper",
          "nickel",
          "bronze",
          "right",
          "value",
          "republic",
          "kingdom",
          "first",
          "second",
          "third",
          "other",
          "others",
          "uncirculated",
          "change",
          "anniversary",
          "special",
          "programmes",
          "piece",
          "pieces",
          "double",
          "metal",
          "sterling",
          "pence",
          "pound",
          "sovereign",
          "threepence",
          "sixpence",
          "english",
          "legend",
          "branch",
          "mints",
          "young",
          "their",
          "these",
          "coins",
          "restrike",
          "farewell");

  private static final Pattern DATED = Pattern.compile("\\b[12]\\d{3}(-[12]\\d{3})?\\b");

  private final CoinStandard standard;
  private final Set<Face> faces = new HashSet<>();
  private final String typeText;
  private final List<TypeWord> typeWords = new ArrayList<>();
  private BigDecimal ounces;

  Profile(CoinStandard standard, Lexicon lexicon) {
    this.standard = standard;
    Issue issue = standard.issue();
    for (String denomination : issue.denominations()) {
      faces.add(new Face.Name(Words.normal(denomination)));
      literal(denomination, lexicon);
    }
    issue.faceValue().ifPresent(value -> fromFaceValue(value, lexicon.units(issue.currency())));
    this.typeText =
        " "
            + Words.normal(String.join(" ", issue.types()) + " " + standard.distinction().variant())
            + " ";
    issue.types().forEach(this::addTypeWords);
  }

  /**
   * @param years the years that the type's name itself carries; empty for all
   */
  private record TypeWord(String word, Optional<Years> years) {}

  /** "Crossing the Delaware 2021" is meant by its words only for 2021. */
  private void addTypeWords(String type) {
    Matcher dated = DATED.matcher(type);
    Optional<Years> years =
        dated.find() ? Optional.of(Years.parse(dated.group())) : Optional.empty();
    for (Word word : Words.of(type)) {
      if (word.isLetters() && word.text().length() >= 5 && !COMMON.contains(word.text())) {
        typeWords.add(new TypeWord(word.text(), years));
      }
    }
  }

  /** "20 francs", "1/10 oz bullion", "2.5 gulden": the amounts in the denomination's own words. */
  private void literal(String denomination, Lexicon lexicon) {
    List<Word> words = Words.of(denomination);
    Amount amount = amountAt(words);
    if (amount == null) {
      return;
    }
    Phrases.Found<Meaning> unit = lexicon.phrases().longestAt(words, amount.next());
    if (unit == null) {
      return;
    }
    for (Meaning meaning : unit.meanings()) {
      if (meaning instanceof Meaning.Unit found) {
        if (found.unit().equals("ounce")) {
          ounces = amount.value();
        } else {
          faces.add(new Face.Amount(amount.value(), found.unit()));
        }
      }
    }
  }

  private record Amount(BigDecimal value, int next) {}

  private static Amount amountAt(List<Word> words) {
    if (words.isEmpty() || !words.get(0).isNumber()) {
      return null;
    }
    BigDecimal first = new BigDecimal(words.get(0).text().replace(',', '.'));
    boolean fraction = words.size() > 2 && words.get(1).is("/") && words.get(2).isNumber();
    if (fraction) {
      return new Amount(
          Decimals.normal(first.divide(new BigDecimal(words.get(2).text()), Decimals.DIVISION)), 3);
    }
    boolean mixed =
        words.size() > 3
            && words.get(1).isNumber()
            && words.get(2).is("/")
            && words.get(3).isNumber();
    if (mixed) {
      BigDecimal part =
          new BigDecimal(words.get(1).text())
              .divide(new BigDecimal(words.get(3).text()), Decimals.DIVISION);
      return new Amount(first.add(part), 4);
    }
    return new Amount(first, 1);
  }

  private void fromFaceValue(BigDecimal value, Map<String, BigDecimal> units) {
    units.forEach((unit, number) -> faces.add(new Face.Amount(value.multiply(number), unit)));
  }

  CoinStandard standard() {
    return standard;
  }

  boolean hasFace(List<Face> wanted) {
    return wanted.stream().anyMatch(faces::contains);
  }

  /** The size of a bullion piece in troy ounces. */
  Optional<BigDecimal> ounces() {
    return Optional.ofNullable(ounces);
  }

  boolean hasType(TypeName type) {
    return type.phrases().stream().anyMatch(phrase -> typeText.contains(" " + phrase + " "));
  }

  /** How many words of the type's name, common ones apart, are among those said. */
  long typeWordsIn(Set<String> said, When when) {
    return typeWords.stream()
        .filter(word -> said.contains(word.word()) && when.within(word.years()))
        .count();
  }
}
