package fineweight.identification.candidate;

import fineweight.clue.TypeName;
import fineweight.clue.lexicon.Face;
import fineweight.clue.lexicon.Lexicon;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.word.Phrases;
import fineweight.clue.word.Word;
import fineweight.clue.word.Words;
import fineweight.metal.Metal;
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
public final class Profile {
  /** Words of type names that name no single type. */
  private static final Pattern DATED = Pattern.compile("\\b[12]\\d{3}(-[12]\\d{3})?\\b");

  private final CoinStandard standard;
  private final Set<Face> faces = new HashSet<>();
  private final Set<Face> literal = new HashSet<>();
  private final String denominations;
  private final String typeText;
  private final String typeNameText;
  private final List<NameWords> typeNames = new ArrayList<>();
  private BigDecimal ounces;

  public Profile(CoinStandard standard, Lexicon lexicon) {
    this.standard = standard;
    Issue issue = standard.issue();
    for (String denomination : issue.denominations()) {
      faces.add(new Face.Name(Words.normal(denomination)));
      literal(denomination, lexicon);
    }
    literal.addAll(faces);
    this.denominations = " " + Words.normal(String.join(" ", issue.denominations())) + " ";
    issue.faceValue().ifPresent(value -> fromFaceValue(value, lexicon.units(issue.currency())));
    this.typeNameText = " " + Words.normal(String.join(" ", issue.types())) + " ";
    this.typeText =
        " "
            + Words.normal(String.join(" ", issue.types()) + " " + standard.distinction().variant())
            + " ";
    issue.types().forEach(type -> addTypeWords(type, lexicon));
  }

  /**
   * The words of one type's name, common ones apart.
   *
   * @param years the years that the name itself carries; empty for all
   */
  private record NameWords(Set<String> words, Optional<Years> years) {}

  /** "Crossing the Delaware 2021" is meant by its words only for 2021. */
  private void addTypeWords(String type, Lexicon lexicon) {
    Matcher dated = DATED.matcher(type);
    Optional<Years> years =
        dated.find() ? Optional.of(Years.parse(dated.group())) : Optional.empty();
    Set<String> words = new HashSet<>();
    for (Word word : Words.of(type)) {
      if (word.isLetters() && word.text().length() >= 5 && !lexicon.isCommon(word.text())) {
        words.add(word.text());
      }
    }
    if (!words.isEmpty()) {
      typeNames.add(new NameWords(words, years));
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

  public CoinStandard standard() {
    return standard;
  }

  Set<Face> faces() {
    return faces;
  }

  public boolean hasFace(List<Face> wanted) {
    return wanted.stream().anyMatch(faces::contains);
  }

  /** The size of a bullion piece in troy ounces. */
  public Optional<BigDecimal> ounces() {
    return Optional.ofNullable(ounces);
  }

  public boolean hasType(TypeName type) {
    return type.phrases().stream().anyMatch(phrase -> typeText.contains(" " + phrase + " "));
  }

  /** Whether all words of one of its types' names, common ones apart, are among those said. */
  public boolean isNamedIn(Set<String> said, When when) {
    for (NameWords name : typeNames) {
      if (said.containsAll(name.words()) && when.within(name.years())) {
        return true;
      }
    }
    return false;
  }

  /** Whether a phrase stands in its type's name. */
  public boolean isTyped(String phrase) {
    return typeNameText.contains(" " + phrase + " ");
  }

  public boolean isGold() {
    return standard
        .specification()
        .composition()
        .mainPreciousMetal()
        .filter(Metal.GOLD::equals)
        .isPresent();
  }

  /** Whether a phrase is its denomination or a part of that. */
  public boolean isDenominatedWith(String phrase) {
    return denominations.contains(" " + phrase + " ");
  }

  /**
   * Whether the amount stands in its own denomination, not only in its face value: "1 pound" does
   * not stand in "sovereign".
   */
  public boolean isCalled(List<Face> wanted) {
    return wanted.stream().anyMatch(literal::contains);
  }
}
