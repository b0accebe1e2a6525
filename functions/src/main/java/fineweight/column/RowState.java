package fineweight.column;

/** How far a row is known. Shown as a word and a sign, never by colour alone. */
public enum RowState {
  VALUED("● valued", "* valued", "valued"),
  SEVERAL("◐ several", "? several", "several standards are possible"),
  NOT_KNOWN("○ not known", "! not known", "not known"),
  NOTHING("– nothing to value", "0 nothing to value", "no precious metal");

  private final String label;
  private final String plainLabel;
  private final String words;

  RowState(String label, String plainLabel, String words) {
    this.label = label;
    this.plainLabel = plainLabel;
    this.words = words;
  }

  /** The cell's text: sign and word. */
  public String label() {
    return label;
  }

  /** The same for files and terminals that know no signs beyond ASCII. */
  public String plainLabel() {
    return plainLabel;
  }

  /** For a sentence. */
  public String words() {
    return words;
  }
}
