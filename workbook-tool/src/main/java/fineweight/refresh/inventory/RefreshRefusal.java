package fineweight.refresh.inventory;

/**
 * A run that cannot go on because of what the workbook holds, in one sentence with place and
 * remedy. Nothing was written.
 */
public final class RefreshRefusal extends Exception {
  private static final long serialVersionUID = 1L;

  /** What kind of trouble; each has its own exit code. */
  public enum Kind {
    /** No sheet looks like an inventory. */
    NO_INVENTORY,
    /** More than one sheet looks like the inventory. */
    SEVERAL_INVENTORIES,
    /** Cells hold what cannot be: an error value, a negative count, a year of five digits. */
    BAD_CELLS,
    /** An option names what is not there. */
    OPTION,
    /** No price is given anywhere. */
    NO_PRICES,
    /** The inventory's sheet is protected against changes. */
    PROTECTED
  }

  private final Kind kind;

  public RefreshRefusal(Kind kind, String sentence) {
    super(sentence);
    this.kind = kind;
  }

  public Kind kind() {
    return kind;
  }
}
