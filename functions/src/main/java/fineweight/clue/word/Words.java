package fineweight.clue.word;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Cuts text into words. Takes time in proportion to the text's length and never fails. */
public final class Words {
  /** Letters that do not fall apart into a base letter and an accent. */
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");

  private static final Map<Character, String> PLAIN =
      Map.ofEntries(
          Map.entry('ß', "ss"),
          Map.entry('ø', "o"),
          Map.entry('Ø', "o"),
          Map.entry('æ', "ae"),
          Map.entry('Æ', "ae"),
          Map.entry('œ', "oe"),
          Map.entry('Œ', "oe"),
          Map.entry('ł', "l"),
          Map.entry('Ł', "l"),
          Map.entry('đ', "d"),
          Map.entry('Đ', "d"),
          Map.entry('ð', "d"),
          Map.entry('þ', "th"),
          Map.entry('ı', "i"));

  private static final Map<Character, String> FRACTIONS =
      Map.ofEntries(
          Map.entry('½', "1/2"),
          Map.entry('¼', "1/4"),
          Map.entry('¾', "3/4"),
          Map.entry('⅓', "1/3"),
          Map.entry('⅔', "2/3"),
          Map.entry('⅕', "1/5"),
          Map.entry('⅛', "1/8"),
          Map.entry('⅒', "1/10"));

  private static final String SIGNS = "%/-?'\"&+=#()<>,;:*|°";

  private final String source;
  private final List<Word> words = new ArrayList<>();

  private Words(String source) {
    this.source = source;
  }

  public static List<Word> of(String text) {
    Words cutting = new Words(text);
    cutting.cut();
    return List.copyOf(cutting.words);
  }

  /** The comparable form of a phrase: its words joined by one blank. */
  public static String normal(String phrase) {
    StringBuilder joined = new StringBuilder();
    for (Word word : of(phrase)) {
      if (word.kind() != Word.Kind.SIGN
          || "%/?+".contains(word.text())
          || isMoney(word.text().charAt(0))) {
        joined.append(joined.isEmpty() ? "" : " ").append(word.text());
      }
    }
    return joined.toString();
  }

  private void cut() {
    int at = 0;
    while (at < source.length()) {
      char c = source.charAt(at);
      if (FRACTIONS.containsKey(c)) {
        at = fraction(at);
      } else if (isDigit(c) || (c == '.' && startsDecimal(at))) {
        at = number(at);
      } else if (Character.isLetter(c)) {
        at = letters(at);
      } else {
        sign(at, c);
        at++;
      }
    }
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private boolean startsDecimal(int at) {
    boolean digitFollows = at + 1 < source.length() && isDigit(source.charAt(at + 1));
    boolean freeBefore = at == 0 || !Character.isLetterOrDigit(source.charAt(at - 1));
    return digitFollows && freeBefore;
  }

  private int fraction(int at) {
    String[] parts = FRACTIONS.get(source.charAt(at)).split("/");
    add(parts[0], at, at + 1, Word.Kind.NUMBER);
    add("/", at, at + 1, Word.Kind.SIGN);
    add(parts[1], at, at + 1, Word.Kind.NUMBER);
    return at + 1;
  }

  private int number(int start) {
    int end = start + 1;
    while (end < source.length()
        && (isDigit(source.charAt(end)) || (isInner(source.charAt(end)) && digitAt(end + 1)))) {
      end++;
    }
    add(source.substring(start, end), start, end, Word.Kind.NUMBER);
    return end;
  }

  private static boolean isInner(char c) {
    return c == '.' || c == ',';
  }

  private boolean digitAt(int at) {
    return at < source.length() && isDigit(source.charAt(at));
  }

  private int letters(int start) {
    StringBuilder plain = new StringBuilder();
    int end = start;
    while (end < source.length() && belongs(end)) {
      char c = source.charAt(end);
      if (Character.isLetter(c)) {
        plain.append(PLAIN.getOrDefault(c, String.valueOf(c)));
      } else if (Character.getType(c) == Character.NON_SPACING_MARK) {
        plain.append(c);
      }
      end++;
    }
    String text =
        MARKS
            .matcher(Normalizer.normalize(plain, Normalizer.Form.NFKD))
            .replaceAll("")
            .toLowerCase(Locale.ROOT);
    add(text, start, end, Word.Kind.LETTERS);
    return end;
  }

  /**
   * Letters, their accents, an apostrophe or a full stop between letters ({@code d'or}, {@code
   * U.S.A}).
   */
  private boolean belongs(int at) {
    char c = source.charAt(at);
    if (Character.isLetter(c) || Character.getType(c) == Character.NON_SPACING_MARK) {
      return true;
    }
    boolean joins = c == '\'' || c == '’' || (c == '.' && afterSingleLetter(at));
    return joins && at + 1 < source.length() && Character.isLetter(source.charAt(at + 1));
  }

  private boolean afterSingleLetter(int at) {
    return at < 2 || !Character.isLetter(source.charAt(at - 2));
  }

  private void sign(int at, char c) {
    char plain =
        c == '–' || c == '—' || c == '−'
            ? '-'
            : c == '’' || c == '‘' || c == '`' ? '\'' : c == '⁄' ? '/' : c;
    if (plain == '×') {
      add("x", at, at + 1, Word.Kind.LETTERS);
    } else if (SIGNS.indexOf(plain) >= 0 || isMoney(plain)) {
      add(String.valueOf(plain), at, at + 1, Word.Kind.SIGN);
    }
  }

  private static boolean isMoney(char c) {
    return Character.getType(c) == Character.CURRENCY_SYMBOL;
  }

  private void add(String text, int start, int end, Word.Kind kind) {
    words.add(new Word(text, source.substring(start, end), start, end, kind));
  }
}
