package fineweight.price;

import fineweight.grade.Grade;
import fineweight.money.Amounts;
import fineweight.standard.Years;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.BigMoney;

/**
 * One line of a collector's price list. Immutable.
 *
 * @param pieces which pieces it is for
 * @param grade the grade it is for; a word that stands for several numbers counts as the lowest of
 *     them; empty for a price without regard to grade
 * @param certified whether it is the price of certified pieces; all others are raw
 * @param each money for one piece, zero or more
 * @param asOf the day the collector noted it, if he did
 * @param origin where he has it from; may be empty
 */
public record ListedPrice(
    Pieces pieces,
    Optional<Grade> grade,
    boolean certified,
    BigMoney each,
    Optional<LocalDate> asOf,
    String origin) {
  /**
   * Which pieces a line is for.
   *
   * @param type a type's name or key in the collector's words; capitals and spaces do not count
   * @param years empty for any
   * @param mint the mint mark in capitals; {@code none} for pieces without one; empty for any
   */
  public record Pieces(String type, Optional<Years> years, String mint) {
    public Pieces {
      Objects.requireNonNull(years, "years");
      type = plain(type);
      mint = mint.strip().toUpperCase(Locale.ROOT);
      if (type.isEmpty()) {
        throw new IllegalArgumentException("a listed price needs a type");
      }
    }

    static String plain(String type) {
      return type.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }

    boolean isFor(PriceQuestion question) {
      return question.types().contains(type)
          && years.map(known -> known.contains(question.year())).orElse(true)
          && (mint.isEmpty() || mint.equals(question.mintOrNone()));
    }

    /** How many years the line spans; a line without years spans more than any with them. */
    int span() {
      return years.map(Pieces::span).orElse(Integer.MAX_VALUE);
    }

    private static int span(Years years) {
      return years.last().orElse(9999) - years.first();
    }
  }

  /**
   * @throws IllegalArgumentException if the price is negative
   */
  public ListedPrice {
    Objects.requireNonNull(pieces, "pieces");
    Objects.requireNonNull(grade, "grade");
    Objects.requireNonNull(asOf, "asOf");
    Objects.requireNonNull(origin, "origin");
    each = Amounts.normal(each);
    if (each.isNegative()) {
      throw new IllegalArgumentException("a listed price is zero or more, not " + each);
    }
  }

  boolean isProof() {
    return grade.map(Grade::proof).orElse(false);
  }
}
