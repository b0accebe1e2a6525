package fineweight.clue.reading;

import fineweight.clue.Clue;
import fineweight.clue.FieldRole;
import fineweight.clue.Measures;
import fineweight.clue.lexicon.Meaning;
import fineweight.clue.passage.Amount;
import fineweight.clue.passage.Hit;
import fineweight.clue.passage.Passage;
import fineweight.clue.word.NumberText;
import fineweight.quantity.Mass;
import fineweight.quantity.MassUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads what was weighed and measured, and the size that the words name. */
final class MeasureReader {
  private static final Pattern NO =
      Pattern.compile("(n|no|nein|nee|non|not|none|false|0|-|nicht|geen).*");
  private static final Pattern GROUPED = Pattern.compile("\\d{1,2},\\d{3}");

  private static final BigDecimal HEAVIEST = new BigDecimal("1000");

  private final List<Passage> passages;
  private Optional<Clue<Mass>> mass = Optional.empty();
  private Optional<Clue<BigDecimal>> diameter = Optional.empty();
  private Optional<Clue<Boolean>> magnetic = Optional.empty();
  private Optional<Clue<Mass>> massInWater = Optional.empty();
  private Optional<Clue<BigDecimal>> statedOunces = Optional.empty();
  private Optional<Clue<Mass>> statedMass = Optional.empty();

  private MeasureReader(List<Passage> passages) {
    this.passages = passages;
  }

  static Measures read(List<Passage> passages) {
    MeasureReader reader = new MeasureReader(passages);
    reader.readAll();
    return new Measures(
        reader.mass,
        reader.diameter,
        reader.magnetic,
        reader.massInWater,
        reader.statedOunces,
        reader.statedMass);
  }

  private void readAll() {
    for (Passage passage : passages) {
      switch (passage.role()) {
        case MASS -> mass = mass(passage);
        case MASS_IN_WATER -> massInWater = mass(passage);
        case DIAMETER -> diameter = number(passage);
        case MAGNET ->
            magnetic =
                magnet(passage.text())
                    .map(yes -> new Clue<>(yes, passage.text(), FieldRole.MAGNET));
        default -> {
          if (passage.role().isText()) {
            named(passage);
            magnetInText(passage);
          }
        }
      }
    }
  }

  private static Optional<Clue<BigDecimal>> number(Passage passage) {
    String digits = passage.text().replaceAll("(?i)[^0-9.,]+$", "").strip();
    Optional<BigDecimal> value = NumberText.read(digits).filter(number -> number.signum() > 0);
    passage.take(0, passage.size());
    return value.map(number -> new Clue<>(number, passage.text(), passage.role()));
  }

  private static Optional<Clue<Mass>> mass(Passage passage) {
    MassUnit unit = unitOf(passage.text());
    return number(passage)
        .map(clue -> new Clue<>(Mass.of(clue.value(), unit), clue.words(), clue.from()));
  }

  private static MassUnit unitOf(String text) {
    String letters = text.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z]", "");
    return switch (letters) {
      case "kg" -> MassUnit.KILOGRAM;
      case "gr", "grain", "grains", "gn" -> letters.equals("gr") ? MassUnit.GRAM : MassUnit.GRAIN;
      case "oz", "ozt", "troyoz", "ozs" -> MassUnit.TROY_OUNCE;
      case "dwt" -> MassUnit.PENNYWEIGHT;
      default -> MassUnit.GRAM;
    };
  }

  static Optional<Boolean> magnet(String text) {
    String plain = text.strip().toLowerCase(java.util.Locale.ROOT);
    if (plain.matches(
            "(y|yes|ja|oui|si|true|1|x|sticks|attracted|magnetic|magnetisch|strong|attracts).*")
        && !plain.startsWith("non")) {
      return Optional.of(true);
    }
    if (NO.matcher(plain).matches()) {
      return Optional.of(false);
    }
    return Optional.empty();
  }

  /** "magnet yes", "sticks to a magnet", "not magnetic". */
  private void magnetInText(Passage passage) {
    String plain = passage.text().toLowerCase(java.util.Locale.ROOT);
    if (magnetic.isPresent() || !plain.contains("magnet")) {
      return;
    }
    if (plain.matches(
        ".*(not magnetic|non-? ?magnetic|no magnet|magnet:? ?no|nicht magnetisch|niet magnetisch|does ?n.t stick|not stick).*")) {
      magnetic = Optional.of(new Clue<>(false, passage.text(), passage.role()));
    } else if (plain.matches(
        ".*(magnet:? ?(yes|ja)|sticks|magnetic|attracted|attracts|magnetisch).*")) {
      magnetic = Optional.of(new Clue<>(true, passage.text(), passage.role()));
    }
  }

  /** 1/2 oz, 5 oz, 250 g, 1 kg. */
  private void named(Passage passage) {
    for (Hit hit : passage.hits()) {
      for (Meaning.Unit unit : hit.all(Meaning.Unit.class)) {
        if (DenominationReader.isMassUnit(unit.unit())) {
          amount(passage, hit, unit.unit());
        }
      }
    }
  }

  private void amount(Passage passage, Hit hit, String unit) {
    Optional<Amount> found = Amount.before(passage, hit.at());
    // "quarter G" is a grade, "quarter ounce" a size.
    boolean letters =
        found.isPresent()
            && found.get().isInLetters(passage)
            && passage.raw(hit.at(), hit.end()).length() < 2;
    if (found.isEmpty() || letters || found.get().value().signum() <= 0) {
      return;
    }
    Amount before = found.get();
    String words = passage.raw(before.start(), hit.end());
    before = withDecimalComma(passage, before, unit);
    boolean ounces = unit.equals("ounce");
    if (ounces && statedOunces.isEmpty()) {
      statedOunces = Optional.of(new Clue<>(before.value(), words, passage.role()));
      passage.take(before.start(), hit.end());
    } else if (!ounces && statedMass.isEmpty()) {
      MassUnit massUnit =
          switch (unit) {
            case "kilogram" -> MassUnit.KILOGRAM;
            case "grain" -> MassUnit.GRAIN;
            case "pennyweight" -> MassUnit.PENNYWEIGHT;
            default -> MassUnit.GRAM;
          };
      statedMass =
          Optional.of(new Clue<>(Mass.of(before.value(), massUnit), words, passage.role()));
      passage.take(before.start(), hit.end());
    }
  }

  /** "27,215 g" are 27.215 grams: no piece weighs 27 kilograms. */
  private static Amount withDecimalComma(Passage passage, Amount amount, String unit) {
    String figures = passage.word(amount.end() - 1).text();
    boolean heavy = unit.equals("gram") && amount.value().compareTo(HEAVIEST) > 0;
    return heavy && GROUPED.matcher(figures).matches()
        ? new Amount(amount.value().movePointLeft(3), amount.start(), amount.end())
        : amount;
  }
}
