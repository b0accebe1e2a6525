package fineweight.clue;

/** What a field of a row is for, as its heading says. */
public enum FieldRole {
  COUNTRY("country"),
  DENOMINATION("denomination"),
  TYPE("type"),
  VARIETY("variety"),
  DESCRIPTION("description"),
  YEAR("year"),
  MINT("mint mark"),
  METAL("metal"),
  FINENESS("fineness"),
  GRADE("grade"),
  CERTIFICATE("certificate number"),
  COUNT("count"),
  MASS("mass of one piece"),
  DIAMETER("diameter"),
  MAGNET("magnet"),
  MASS_IN_WATER("mass in water"),
  NOTES("notes");

  private final String words;

  FieldRole(String words) {
    this.words = words;
  }

  /** For a person. */
  public String words() {
    return words;
  }

  /** Whether the field holds free words about the coin, in the order in which they are believed. */
  public boolean isText() {
    return this == DENOMINATION
        || this == TYPE
        || this == VARIETY
        || this == DESCRIPTION
        || this == NOTES;
  }
}
