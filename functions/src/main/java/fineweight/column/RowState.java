package fineweight.column;

/** How far a row is known. Shown as a word and a sign, never by colour alone. */
public enum RowState {
  VALUED("● valued", "valued"),
  SEVERAL("◐ several", "several standards are possible"),
  NOT_KNOWN("○ not known", "not known"),
  NOTHING("– nothing to value", "no precious metal");

  private final String label;
  private final String words;

  RowState(String label, String words) {
    this.label = label;
    this.words = words;
  }

  /** The cell's text: sign and word. */
  public String label() {
    return label;
  }

  /** For a sentence. */
  public String words() {
    return words;
  }
}
