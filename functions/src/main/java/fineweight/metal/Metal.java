package fineweight.metal;

import java.util.Locale;
import java.util.Optional;

/** The metals of coins. Symbols are IUPAC's; the four codes for a troy ounce are ISO 4217's. */
public enum Metal {
  GOLD("Au", "XAU", "gold"),
  SILVER("Ag", "XAG", "silver"),
  PLATINUM("Pt", "XPT", "platinum"),
  PALLADIUM("Pd", "XPD", "palladium"),
  RHODIUM("Rh", "", "rhodium"),
  NIOBIUM("Nb", "", "niobium"),
  TANTALUM("Ta", "", "tantalum"),
  TITANIUM("Ti", "", "titanium"),
  COPPER("Cu", "", "copper"),
  NICKEL("Ni", "", "nickel"),
  ZINC("Zn", "", "zinc"),
  TIN("Sn", "", "tin"),
  MANGANESE("Mn", "", "manganese"),
  ALUMINIUM("Al", "", "aluminium"),
  IRON("Fe", "", "iron"),
  CHROMIUM("Cr", "", "chromium"),
  MAGNESIUM("Mg", "", "magnesium"),
  LEAD("Pb", "", "lead"),
  ANTIMONY("Sb", "", "antimony");

  private final String symbol;
  private final String ounceCode;
  private final String word;

  Metal(String symbol, String ounceCode, String word) {
    this.symbol = symbol;
    this.ounceCode = ounceCode;
    this.word = word;
  }

  /** The IUPAC element symbol, such as {@code Ag}. */
  public String symbol() {
    return symbol;
  }

  /**
   * ISO 4217 code of one troy ounce of this metal, such as {@code XAG}; empty for metals without
   * one.
   */
  public Optional<String> ounceCode() {
    return ounceCode.isEmpty() ? Optional.empty() : Optional.of(ounceCode);
  }

  /** The English name in lower case. */
  public String word() {
    return word;
  }

  /**
   * Gold, silver, platinum and palladium: the metals with an ISO 4217 code, traded by the troy
   * ounce.
   */
  public boolean isPrecious() {
    return !ounceCode.isEmpty();
  }

  /** The metal of an element symbol or ISO 4217 code, upper or lower case. */
  public static Optional<Metal> ofCode(String code) {
    String wanted = code.strip().toUpperCase(Locale.ROOT);
    for (Metal metal : values()) {
      if (metal.symbol.toUpperCase(Locale.ROOT).equals(wanted)
          || (metal.isPrecious() && metal.ounceCode.equals(wanted))) {
        return Optional.of(metal);
      }
    }
    return Optional.empty();
  }
}
