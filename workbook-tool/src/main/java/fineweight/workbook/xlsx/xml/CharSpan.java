package fineweight.workbook.xlsx.xml;

import java.math.BigDecimal;
import org.codehaus.stax2.typed.TypedValueDecoder;

/**
 * Characters where the parser keeps them, so that of millions of short values no text need be made.
 * Valid until the cursor goes on.
 */
public final class CharSpan {
  private static final int MOST_DIGITS = 9;
  private static final char[] NOTHING = new char[0];

  private final TypedValueDecoder taker = new Taker();
  private char[] chars = NOTHING;
  private int from;
  private int to;

  /** The library gives an attribute's characters to whoever decodes them. */
  private final class Taker extends TypedValueDecoder {
    @Override
    public void decode(String input) {
      set(input.toCharArray(), 0, input.length());
    }

    @Override
    public void decode(char[] buffer, int start, int end) {
      set(buffer, start, end);
    }

    @Override
    public void handleEmptyValue() {
      set(NOTHING, 0, 0);
    }
  }

  TypedValueDecoder taker() {
    return taker;
  }

  void set(char[] buffer, int start, int end) {
    chars = buffer;
    from = start;
    to = end;
  }

  /** The library leaves out spaces around a value, which are part of it. */
  boolean isPlain() {
    boolean before = from > 0 && chars[from - 1] <= ' ';
    boolean behind = to < chars.length && chars[to] <= ' ' && chars[to] != 0;
    return to > from && !before && !behind;
  }

  public int length() {
    return to - from;
  }

  public char at(int index) {
    return chars[from + index];
  }

  /** A whole number of a few digits and nothing else; -1 for all else. */
  public int number() {
    int length = to - from;
    if (length == 0 || length > MOST_DIGITS) {
      return -1;
    }
    int number = 0;
    for (int i = from; i < to; i++) {
      int digit = chars[i] - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      number = number * 10 + digit;
    }
    return number;
  }

  /**
   * @throws NumberFormatException if it is none
   */
  public BigDecimal decimal() {
    return new BigDecimal(chars, from, to - from);
  }

  public boolean is(String text) {
    if (text.length() != to - from) {
      return false;
    }
    for (int i = 0; i < text.length(); i++) {
      if (chars[from + i] != text.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  @Override
  public String toString() {
    return new String(chars, from, to - from);
  }
}
