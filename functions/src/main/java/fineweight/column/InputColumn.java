package fineweight.column;

import fineweight.clue.FieldRole;
import java.util.Optional;

/** What a column of the collector's own holds. */
public enum InputColumn {
  KEY("number of the piece"),
  COUNTRY(FieldRole.COUNTRY),
  DENOMINATION(FieldRole.DENOMINATION),
  TYPE(FieldRole.TYPE),
  VARIETY(FieldRole.VARIETY),
  DESCRIPTION(FieldRole.DESCRIPTION),
  YEAR(FieldRole.YEAR),
  MINT(FieldRole.MINT),
  COUNT(FieldRole.COUNT),
  GRADE(FieldRole.GRADE),
  CERTIFICATE(FieldRole.CERTIFICATE),
  METAL(FieldRole.METAL),
  FINENESS(FieldRole.FINENESS),
  MASS(FieldRole.MASS),
  DIAMETER(FieldRole.DIAMETER),
  MAGNET(FieldRole.MAGNET),
  MASS_IN_WATER(FieldRole.MASS_IN_WATER),
  NOTES(FieldRole.NOTES),
  COST("cost"),
  COST_EACH("cost of one piece"),
  COST_ALL("cost of the row"),
  CURRENCY("currency of the cost"),
  LOT("lot"),
  OWN_PRICE("your own price"),
  PLACE("place kept"),
  PICTURE("picture"),
  SELLER("seller"),
  DATE_BOUGHT("date bought"),
  WEAR("wear"),
  PAYOUT_CLASS("class of payout"),
  STATUS("kept or for sale"),
  SOLD_FOR("sold for"),
  DATE_SOLD("date sold"),
  FEES("fees of the sale"),
  ANSWER("your answer"),
  OTHER("not used");

  private final String words;
  private final FieldRole role;

  InputColumn(String words) {
    this.words = words;
    this.role = null;
  }

  InputColumn(FieldRole role) {
    this.words = role.words();
    this.role = role;
  }

  /** For a person. */
  public String words() {
    return words;
  }

  /** The field it is for the reader of clues; empty if it says nothing about the coin. */
  public Optional<FieldRole> role() {
    return Optional.ofNullable(role);
  }

  /** Whether such a column alone can name a coin. */
  boolean namesCoin() {
    return this == DESCRIPTION || this == DENOMINATION || this == TYPE;
  }
}
