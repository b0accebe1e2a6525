package fineweight.standard;

import java.util.Locale;

/** How well a figure of the catalogue is supported. */
public enum Certainty {
  /** Mass or composition stood in two texts that were read. */
  TWO_SOURCES("two-sources", "two texts"),
  /** It stood in one text that was read. */
  SOURCED("sourced", "one text"),
  /** The deciding figure was not found in a text. */
  MEMORY("memory", "from memory"),
  /** The collector's own addition. */
  OWN("own", "your own entry");

  private final String code;
  private final String words;

  Certainty(String code, String words) {
    this.code = code;
    this.words = words;
  }

  /** The form in the catalogue's files. */
  public String code() {
    return code;
  }

  /** The form for a person. */
  public String words() {
    return words;
  }

  /**
   * @throws IllegalArgumentException if no certainty has this code
   */
  static Certainty ofCode(String code) {
    for (Certainty certainty : values()) {
      if (certainty.code.equals(code)) {
        return certainty;
      }
    }
    throw new IllegalArgumentException(
        "\""
            + code.toLowerCase(Locale.ROOT)
            + "\" is no certainty; expected two-sources, sourced, memory or own");
  }
}
