package fineweight.settings;

/** Something the user gave that cannot be used, in one sentence with the remedy. */
public final class SettingException extends Exception {
  private static final long serialVersionUID = 1L;

  public SettingException(String sentence) {
    super(sentence);
  }
}
