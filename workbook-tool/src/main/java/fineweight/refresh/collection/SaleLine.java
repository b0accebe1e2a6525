package fineweight.refresh.collection;

import fineweight.clue.Clues;
import fineweight.clue.Dating;
import fineweight.column.Appraisal;
import fineweight.identification.Identification.OneStandard;
import fineweight.identification.Identification.SeveralStandards;
import fineweight.refresh.inventory.Keeping;
import fineweight.refresh.inventory.RowCondition;
import fineweight.standard.Issue;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;

/**
 * One clear line for a buyer. Immutable.
 *
 * @param coin country, denomination and type, date and mint mark; a doubt is said
 * @param state grade, certified or raw, faults
 * @param figures what the seller reckons with
 * @param keeping where it is kept and pictured
 */
public record SaleLine(
    String number, int row, Coin coin, State state, Figures figures, Keeping keeping) {
  /**
   * What it is.
   *
   * @param metal in words with its fineness; empty where it is not known
   */
  public record Coin(String country, String words, String year, String mint, String metal) {}

  /**
   * How it is preserved.
   *
   * @param grade in the owner's words; empty if none is recorded
   * @param holder "raw", or "certified" with the number on the holder
   * @param faults in the owner's words; "none known" if there are none
   */
  public record State(String grade, String holder, String faults) {}

  /**
   * @param least the least price for all pieces of the line
   * @param floor their melt
   */
  public record Figures(
      long pieces, Optional<Money> cost, Optional<Money> least, Optional<BigDecimal> floor) {}

  /** The line of an offer. */
  public static SaleLine of(ForSale.Offer offer) {
    Appraisal appraisal = offer.row().appraisal();
    return new SaleLine(
        offer.number(),
        offer.row().row(),
        coin(offer),
        state(appraisal.clues()),
        new Figures(
            appraisal.pieces().orElse(1L),
            offer.cost(),
            offer.least().map(least -> least.proceeds().price()),
            offer.floor()),
        offer.row().keeping());
  }

  private static Coin coin(ForSale.Offer offer) {
    Appraisal appraisal = offer.row().appraisal();
    Clues clues = appraisal.clues();
    String year = year(clues.dating());
    String mint = clues.mint().map(said -> said.value()).orElse("");
    String metal =
        appraisal
            .figures()
            .fineness()
            .map(fineness -> appraisal.figures().metal() + " " + fineness)
            .orElse(appraisal.figures().metal());
    if (appraisal.identification() instanceof OneStandard one) {
      Issue issue = one.standard().issue();
      return new Coin(country(issue.country()), words(issue), year, mint, metal);
    }
    if (appraisal.identification() instanceof SeveralStandards several) {
      Issue issue = several.candidates().get(0).standard().issue();
      String doubt = ", not settled: " + several.question();
      return new Coin(
          country(issue.country()), issue.denomination() + doubt, year, mint, metal + "?");
    }
    return new Coin("", offer.row().words(), year, mint, metal);
  }

  private static String words(Issue issue) {
    List<String> types = issue.types();
    return types.isEmpty() ? issue.denomination() : issue.denomination() + ", " + types.get(0);
  }

  static String year(Dating dating) {
    return switch (dating.kind()) {
      case UNSAID -> "";
      case SPAN -> dating.years().get(0) + "-" + dating.years().get(1);
      default -> dating.words();
    };
  }

  static String country(String key) {
    return key.matches("[A-Z]{2}") ? new Locale("", key).getDisplayCountry(Locale.ENGLISH) : key;
  }

  private static State state(Clues clues) {
    var said = clues.condition();
    boolean certified = RowCondition.of(said).certified();
    String number = said.certificate().map(clue -> " " + clue.value()).orElse("");
    List<String> faults = RowCondition.faults(said);
    return new State(
        said.grade().map(grade -> grade.words()).orElse(""),
        certified ? "certified" + number : "raw",
        faults.isEmpty() ? "none known" : String.join(", ", faults));
  }
}
