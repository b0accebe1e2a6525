package fineweight.giveaway;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The free texts of formats: codes of numbers, names of fonts and of cell styles. */
final class LookRules {
  private static final Pattern STYLE =
      Pattern.compile(
          "Normal|Comma( \\[0\\])?|Currency( \\[0\\])?|Percent|Hyperlink|Followed Hyperlink|Note"
              + "|Warning Text|Title|Heading [1-4]|Input|Output|Calculation|Check Cell|Linked Cell"
              + "|Total|Good|Bad|Neutral|Accent[1-6]|(20|40|60)% - Accent[1-6]|Explanatory Text");

  private static final Pattern TABLE_STYLE =
      Pattern.compile("(Table|Pivot)Style(Light|Medium|Dark)[0-9]{1,2}");

  private static final String COLOUR = "black|blue|cyan|green|magenta|red|white|yellow";

  /** What a code of a number may hold, piece by piece; ECMA-376 part 1, 18.8.30 and 18.8.31. */
  private static final Pattern FORMAT_PIECE =
      Pattern.compile(
          "(?i)\"(?<text>[^\"]*)\"|\\\\(?<sign>.)|\\[(\\$(?<money>[^-\\]]{0,3})(-[0-9a-f]{1,8})?"
              + "|(?<colour>"
              + COLOUR
              + "|color ?[0-9]{1,2})|(?<condition>[<>=]{1,2}[-0-9.]+)|h+|m+|s+)\\]"
              + "|_.|\\*.|general|am/pm|a/p|e[+-]|[ymdhsbe]+|[0#?.,%/@;:+() $€£¥-]");

  private static final Set<String> FONTS = KeptWords.lines("fonts.txt");

  private final KeptWords words;
  private final Findings findings;
  private int styles;

  LookRules(KeptWords words, Findings findings) {
    this.words = words;
    this.findings = findings;
  }

  /** A code such as yyyy-mm-dd or 0.00 inside a formula. */
  static boolean isDateFormat(String text) {
    return text.matches("[yYmMdDhHsS0#?.,:/ -]{1,20}");
  }

  /** The code without texts of the owner's. */
  String formatCode(String code) {
    StringBuilder kept = new StringBuilder();
    Matcher piece = FORMAT_PIECE.matcher(code);
    int at = 0;
    while (at < code.length()) {
      if (!piece.find(at) || piece.start() != at) {
        findings.removed("number format that is not known");
        return "General";
      }
      String text = piece.group("text");
      if (text == null || text.isBlank() || words.knows(text.strip())) {
        kept.append(piece.group());
      } else {
        findings.removed("text in a number format");
      }
      at = piece.end();
    }
    return kept.isEmpty() ? "General" : kept.toString();
  }

  /** Null for a font that only its owner has. */
  String font(String name) {
    if (FONTS.contains(name.toLowerCase(Locale.ROOT))) {
      return name;
    }
    findings.removed("name of a font");
    return null;
  }

  /** Names of an owner's styles are replaced: cells point to their numbers. */
  String cellStyle(String name) {
    return STYLE.matcher(name).matches() ? name : "Style " + ++styles;
  }

  /** Null for a style of the owner's, which is not taken along. */
  String tableStyle(String name) {
    return TABLE_STYLE.matcher(name).matches() ? name : null;
  }

  /** Whether a header or footer holds nothing but its codes and words such as page. */
  boolean isPlainHeader(String text) {
    String bare =
        text.replaceAll("&\"[^\"]*\"", " ")
            .replaceAll("&K[0-9A-Fa-f]{6}", " ")
            .replaceAll("&[0-9]{1,3}", " ")
            .replaceAll("&[A-Za-z&]", " ");
    for (String word : bare.strip().split("[\\s,;:/|-]+")) {
      if (!word.isEmpty() && !words.knows(word)) {
        return false;
      }
    }
    return true;
  }
}
