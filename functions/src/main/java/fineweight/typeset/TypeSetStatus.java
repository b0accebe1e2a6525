package fineweight.typeset;

/** What a piece does for a set. */
public enum TypeSetStatus {
  /** The first piece for its place. */
  FILLS("fills a hole"),
  /** Better than every earlier piece for its place. */
  IMPROVES("improves"),
  /** Not better than an earlier one. */
  DUPLICATE("duplicate"),
  /** Several places are possible; it counts for none until that is settled. */
  OPEN("open"),
  /** The set has no place for it. */
  NOT_IN_SET("not in the set");

  private final String words;

  TypeSetStatus(String words) {
    this.words = words;
  }

  /** The form for a cell. */
  public String words() {
    return words;
  }
}
