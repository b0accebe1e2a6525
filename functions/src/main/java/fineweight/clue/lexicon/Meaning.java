package fineweight.clue.lexicon;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;

/**
 * What a phrase of the lexicon means. A phrase may have several meanings; its surroundings decide.
 */
public sealed interface Meaning {
  /**
   * A country or former issuer.
   *
   * @param issuers catalogue keys; empty if the catalogue has no standard of it
   * @param kind {@code ancient} or {@code token} where nothing of it is valued by a standard;
   *     otherwise empty
   * @param columnOnly whether the phrase counts only in a column of countries
   */
  record Country(List<String> issuers, String kind, boolean columnOnly) implements Meaning {}

  /** A unit of account or of mass, in its canonical singular form. */
  record Unit(String unit) implements Meaning {}

  /**
   * A coin that has a name of its own.
   *
   * @param faces what it may be
   * @param countries catalogue keys to which the name belongs; empty for any
   */
  record Coin(List<Face> faces, Set<String> countries) implements Meaning {}

  /**
   * An everyday name of a type.
   *
   * @param typePhrases one of them occurs in the type name or variant of the standards meant
   * @param countries catalogue keys; empty for any
   * @param implied the denomination, if the type alone names the coin; may be empty
   */
  record Type(List<String> typePhrases, Set<String> countries, List<Face> implied)
      implements Meaning {}

  /**
   * A metal or an alloy by its name.
   *
   * @param metal an IUPAC symbol or the name of an alloy such as {@code bronze} or {@code clad}
   * @param risky whether the phrase is an ordinary word too and needs a context
   */
  record MetalName(String metal, boolean risky) implements Meaning {}

  /** A fineness by its name, such as sterling. */
  record FinenessName(BigDecimal perMille) implements Meaning {}

  /**
   * A remark about the piece.
   *
   * @param kind such as {@code proof}, {@code copy}, {@code plated}, {@code mounted}
   */
  record Mark(String kind) implements Meaning {}

  /**
   * A grade on the scale of 1 to 70.
   *
   * @param columnOnly whether the phrase counts only in a column of grades
   */
  record GradeName(int grade, boolean columnOnly) implements Meaning {}

  /** A mint by its name, or the words for no mint mark (empty letters). */
  record MintName(String letters) implements Meaning {}

  /** A number of pieces in words, such as a dozen. */
  record Count(long pieces) implements Meaning {}

  /** Words that leave the number of pieces open, such as a tube or a handful. */
  record OpenCount() implements Meaning {}
}
