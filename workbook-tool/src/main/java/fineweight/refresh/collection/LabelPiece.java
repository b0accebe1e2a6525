package fineweight.refresh.collection;

import fineweight.clue.Clues;
import fineweight.column.Appraisal;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.label.LabelField;
import fineweight.metal.Metal;
import fineweight.money.Amounts;
import fineweight.quantity.Mass;
import fineweight.refresh.inventory.ReadRow;
import fineweight.refresh.inventory.RowCondition;
import fineweight.standard.Issue;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Pieces of a row for which labels can be printed. Immutable.
 *
 * @param row with as many pieces as are meant
 * @param number of the piece
 * @param forSale whether they are for sale; they are kept otherwise
 * @param least the least price of all of them in one sale, and of one sold alone; empty where there
 *     is none
 */
public record LabelPiece(ReadRow row, String number, boolean forSale, Least least) {
  /** Least prices. */
  public record Least(Optional<Money> all, Optional<Money> each) {
    public static final Least NONE = new Least(Optional.empty(), Optional.empty());
  }

  /** How many pieces; one where the number is not known. */
  public long pieces() {
    return row.appraisal().pieces().orElse(1L);
  }

  public String place() {
    return row.keeping().place();
  }

  public String lot() {
    return row.money().lot();
  }

  /**
   * What a label can say.
   *
   * @param count how many pieces the label stands for, from 1
   * @param priced whether the least price is said
   */
  public Map<LabelField, String> fields(long count, boolean priced) {
    Map<LabelField, String> fields = new EnumMap<>(LabelField.class);
    fields.put(LabelField.NUMBER, number);
    fields.put(LabelField.LOT, lot());
    fields.put(LabelField.PLACE, place());
    fields.put(LabelField.COUNT, count > 1 ? count + " pieces" : "");
    if (priced) {
      Optional<Money> price = count == pieces() ? least.all() : least.each();
      fields.put(LabelField.PRICE, price.map(Amounts::words).orElse(""));
    }
    coin(fields);
    dated(fields);
    metal(fields);
    state(fields);
    return fields;
  }

  private Appraisal appraisal() {
    return row.appraisal();
  }

  /** A doubt is said by a mark; the question itself stands in the inventory. */
  private void coin(Map<LabelField, String> fields) {
    if (appraisal().identification() instanceof OneStandard one) {
      issue(fields, one.standard().issue(), "");
    } else if (appraisal().identification() instanceof SeveralStandards several) {
      issue(fields, several.candidates().get(0).standard().issue(), " ?");
    } else {
      fields.put(LabelField.DENOMINATION, row.words());
    }
  }

  private static void issue(Map<LabelField, String> fields, Issue issue, String doubt) {
    List<String> types = issue.types();
    boolean typed = !types.isEmpty() && doubt.isEmpty();
    fields.put(LabelField.COUNTRY, SaleLine.country(issue.country()));
    fields.put(LabelField.DENOMINATION, issue.denomination() + doubt);
    fields.put(LabelField.TYPE, typed ? type(types.get(0), issue.denomination()) : "");
  }

  /** Some types begin with their denomination, which stands on the label already. */
  private static String type(String type, String denomination) {
    String rest = type.startsWith(denomination) ? type.substring(denomination.length()) : type;
    return rest.replaceAll("^[\\s,]+", "");
  }

  private void dated(Map<LabelField, String> fields) {
    Clues clues = appraisal().clues();
    String year = SaleLine.year(clues.dating());
    String mint = clues.mint().map(said -> said.value()).orElse("");
    fields.put(LabelField.YEAR, year);
    fields.put(LabelField.MINT, mint);
    fields.put(LabelField.DATE, year.isEmpty() || mint.isEmpty() ? year + mint : year + "-" + mint);
  }

  private void metal(Map<LabelField, String> fields) {
    Appraisal.Figures figures = appraisal().figures();
    boolean open = appraisal().identification() instanceof SeveralStandards;
    String fineness = figures.fineness().map(parts -> " " + tenth(parts.perMille())).orElse("");
    fields.put(
        LabelField.METAL,
        figures.metal() + fineness + (open && !figures.metal().isEmpty() ? " ?" : ""));
    String before = open ? "at least " : "";
    StringBuilder grams = new StringBuilder();
    StringBuilder ounces = new StringBuilder();
    for (Metal metal : Metal.values()) {
      Mass fine = figures.content().of(metal);
      if (metal.isPrecious() && !fine.isZero()) {
        // A piece of two precious metals says which mass is of which.
        String also = grams.isEmpty() ? "" : " " + metal.word() + " ";
        grams.append(also).append(rounded(fine.grams(), 2)).append(" g fine");
        ounces.append(also).append(rounded(fine.troyOunces(), 4)).append(" ozt");
      }
    }
    fields.put(LabelField.FINE, grams.isEmpty() ? "" : before + grams);
    fields.put(LabelField.OUNCES, ounces.isEmpty() ? "" : before + ounces);
  }

  private static String tenth(BigDecimal perMille) {
    BigDecimal tenths = perMille.setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
    return tenths.setScale(Math.max(0, tenths.scale())).toPlainString();
  }

  private static String rounded(BigDecimal figure, int places) {
    return figure.setScale(places, RoundingMode.HALF_UP).toPlainString();
  }

  private void state(Map<LabelField, String> fields) {
    var said = appraisal().clues().condition();
    boolean certified = RowCondition.of(said).certified();
    String certificate = said.certificate().map(clue -> " " + clue.value()).orElse("");
    fields.put(LabelField.GRADE, said.grade().map(grade -> grade.words()).orElse(""));
    fields.put(LabelField.HOLDER, certified ? "certified" + certificate : "");
    fields.put(LabelField.FAULTS, String.join(", ", RowCondition.faults(said)));
  }
}
