package fineweight.label;

import java.util.Locale;
import java.util.Optional;

/** What a label can say of a piece. */
public enum LabelField {
  NUMBER,
  COUNTRY,
  DENOMINATION,
  TYPE,
  YEAR,
  MINT,
  /** Year and mint mark, as collectors write them: 1881-S. */
  DATE,
  METAL,
  /** Fine mass of one piece in grams, with its unit. */
  FINE,
  /** The same in troy ounces. */
  OUNCES,
  GRADE,
  /** The certificate; empty for a raw piece. */
  HOLDER,
  FAULTS,
  LOT,
  PLACE,
  /** How many pieces the label stands for; empty for one. */
  COUNT,
  /** The least price; empty unless it was asked for. */
  PRICE;

  /** As it stands between braces. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<LabelField> of(String word) {
    for (LabelField field : values()) {
      if (field.word().equals(word.strip().toLowerCase(Locale.ROOT))) {
        return Optional.of(field);
      }
    }
    return Optional.empty();
  }
}
