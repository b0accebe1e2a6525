package fineweight.terminal;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.text.Normalizer;
import java.util.Map;

/**
 * Puts what the reader's letters cannot show into plain ones, so that a sign never becomes a row of
 * question marks or of strange letters. What can be shown passes unchanged.
 */
final class PlainSigns extends Writer {
  /** Signs of ours, and letters that do not come apart into a plain one and a mark. */
  private static final Map<Integer, String> PLAIN =
      Map.ofEntries(
          Map.entry((int) '\u25CF', "*"),
          Map.entry((int) '\u25D0', "?"),
          Map.entry((int) '\u25CB', "!"),
          Map.entry((int) '\u2013', "-"),
          Map.entry((int) '\u2014', "-"),
          Map.entry((int) '\u2212', "-"),
          Map.entry((int) '\u2030', "o/oo"),
          Map.entry((int) '\u2192', "->"),
          Map.entry((int) '\u2713', "x"),
          Map.entry((int) '\u2018', "'"),
          Map.entry((int) '\u2019', "'"),
          Map.entry((int) '\u201C', "\""),
          Map.entry((int) '\u201D', "\""),
          Map.entry((int) '\u2044', "/"),
          Map.entry((int) '\u00D7', "x"),
          Map.entry((int) '\u00B0', " deg"),
          Map.entry((int) '\u20AC', "EUR"),
          Map.entry((int) '\u00A3', "GBP"),
          Map.entry((int) '\u00DF', "ss"),
          Map.entry((int) '\u00C6', "AE"),
          Map.entry((int) '\u00E6', "ae"),
          Map.entry((int) '\u0152', "OE"),
          Map.entry((int) '\u0153', "oe"),
          Map.entry((int) '\u00D8', "O"),
          Map.entry((int) '\u00F8', "o"),
          Map.entry((int) '\u0141', "L"),
          Map.entry((int) '\u0142', "l"),
          Map.entry((int) '\u0110', "D"),
          Map.entry((int) '\u0111', "d"),
          Map.entry((int) '\u0131', "i"));

  private final Writer to;
  private final CharsetEncoder letters;

  /**
   * @param to takes the text
   * @param letters what its reader can show
   */
  PlainSigns(Writer to, Charset letters) {
    this.to = to;
    this.letters = letters.newEncoder();
  }

  @Override
  public void write(char[] text, int from, int length) throws IOException {
    to.write(plain(new String(text, from, length)));
  }

  private String plain(String text) {
    if (letters.canEncode(text)) {
      return text;
    }
    StringBuilder plain = new StringBuilder();
    text.codePoints().forEach(sign -> plain.append(plain(sign)));
    return plain.toString();
  }

  private String plain(int sign) {
    String itself = Character.toString(sign);
    if (letters.canEncode(itself)) {
      return itself;
    }
    String known = PLAIN.get(sign);
    if (known != null) {
      return known;
    }
    StringBuilder apart = new StringBuilder();
    Normalizer.normalize(itself, Normalizer.Form.NFKD)
        .codePoints()
        .filter(part -> Character.getType(part) != Character.NON_SPACING_MARK)
        .forEach(part -> apart.append(part == sign ? "?" : plain(part)));
    return apart.toString();
  }

  @Override
  public void flush() throws IOException {
    to.flush();
  }

  @Override
  public void close() throws IOException {
    to.close();
  }
}
