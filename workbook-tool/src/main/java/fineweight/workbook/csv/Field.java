package fineweight.workbook.csv;

/**
 * A field. Immutable.
 *
 * @param raw as it stands in the file, with its quotation marks
 * @param text what it means
 * @param quoted whether it stands in quotation marks
 */
record Field(String raw, String text, boolean quoted) {
  static final char QUOTE = '"';

  static Field plain(String text) {
    return new Field(text, text, false);
  }

  static Field quoted(String text) {
    return new Field(QUOTE + text.replace("\"", "\"\"") + QUOTE, text, true);
  }
}
