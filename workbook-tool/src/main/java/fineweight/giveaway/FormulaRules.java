package fineweight.giveaway;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether a formula may be given away: it looks at some cell, every name in it is known, and the
 * texts in it are harmless. A formula without any cell is a value in disguise.
 */
final class FormulaRules {
  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<text>\"(?:[^\"]|\"\")*\")"
              + "|(?<quoted>'(?:[^']|'')+')(?=[!:])"
              + "|(?<error>#[A-Z/0!?]+[!?A]?)"
              + "|(?<cell>\\$?[A-Za-z]{1,3}\\$?[0-9]{1,7}(?![\\w.(!]))"
              + "|(?<columns>\\$?[A-Za-z]{1,3}:\\$?[A-Za-z]{1,3}(?![\\w.(!]))"
              + "|(?<rows>\\$?[0-9]{1,7}:\\$?[0-9]{1,7}(?![\\w.]))"
              + "|(?<number>[0-9]+(?:\\.[0-9]*)?(?:[eE][-+]?[0-9]+)?|\\.[0-9]+)"
              + "|(?<name>[\\p{L}_\\\\][\\p{L}\\p{N}_.\\\\?]*)"
              + "|(?<bracket>\\[[^\\[\\]]*\\])"
              + "|(?<sign>[-+*/^&=<>%(),;:!@{}\\[\\]\\s])");

  private static final Set<String> TABLE_PARTS =
      Set.of("#all", "#data", "#headers", "#totals", "#this row", "@");

  private final KeptWords words;
  private final Findings findings;
  private final Set<String> functions = KeptWords.lines("functions.txt");
  private final Set<String> sheets = new HashSet<>();
  private final Set<String> names = new HashSet<>();
  private final Set<String> tables = new HashSet<>();
  private final Set<String> columns = new HashSet<>();

  FormulaRules(KeptWords words, Findings findings) {
    this.words = words;
    this.findings = findings;
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  void addSheet(String name) {
    sheets.add(key(name));
  }

  void addName(String name) {
    names.add(key(name));
  }

  void addTable(String name) {
    tables.add(key(name));
  }

  void addColumn(String name) {
    columns.add(key(name));
  }

  /**
   * @return why the formula cannot be given away; empty if it can
   */
  Optional<String> objection(String formula) {
    Matcher token = TOKEN.matcher(formula);
    boolean looksAtCells = false;
    boolean hasNumbers = false;
    int at = 0;
    while (at < formula.length()) {
      if (!token.find(at) || token.start() != at) {
        return Optional.of("holds a sign that is not known");
      }
      Optional<String> objection = objection(token, formula);
      if (objection.isPresent()) {
        return objection;
      }
      looksAtCells |= isReference(token, formula);
      hasNumbers |= token.group("number") != null && !words.knows(token.group());
      at = token.end();
    }
    if (!looksAtCells) {
      return Optional.of("looks at no cell and is a value of yours");
    }
    if (hasNumbers) {
      findings.left("formula with a figure of its own", "=" + formula);
    }
    return Optional.empty();
  }

  private Optional<String> objection(Matcher token, String formula) {
    String text = token.group();
    if (token.group("text") != null) {
      String bare = text.substring(1, text.length() - 1).replace("\"\"", "\"");
      return words.knows(bare) || LookRules.isDateFormat(bare)
          ? Optional.empty()
          : Optional.of("holds the words " + text);
    }
    if (token.group("quoted") != null) {
      String bare = text.substring(1, text.length() - 1).replace("''", "'");
      return known(sheets.contains(key(bare)), "speaks of another file or sheet");
    }
    if (token.group("error") != null) {
      return Optional.of("is broken");
    }
    if (token.group("bracket") != null) {
      return bracket(text.substring(1, text.length() - 1));
    }
    return token.group("name") != null ? name(text, formula, token.end()) : Optional.empty();
  }

  private Optional<String> bracket(String inner) {
    String bare = inner.startsWith("@") ? inner.substring(1) : inner;
    String plain = key(bare.replaceAll("'(.)", "$1").strip());
    return known(
        plain.isEmpty() || TABLE_PARTS.contains(plain) || columns.contains(plain),
        "speaks of another file");
  }

  private Optional<String> name(String name, String formula, int end) {
    String key = key(name);
    char next = end < formula.length() ? formula.charAt(end) : ' ';
    if (next == '(') {
      String bare = key.replaceFirst("^(_xlfn\\.)?(_xlws\\.)?", "");
      return known(
          functions.contains(bare) || bare.startsWith("fineweight."),
          "uses a function that is not of the program");
    }
    boolean known =
        next == '['
            ? tables.contains(key)
            : next == '!'
                ? sheets.contains(key)
                : names.contains(key)
                    || tables.contains(key)
                    || sheets.contains(key)
                    || key.equals("true")
                    || key.equals("false");
    return known(known, "uses a name that goes");
  }

  private static Optional<String> known(boolean known, String objection) {
    return known ? Optional.empty() : Optional.of(objection);
  }

  private boolean isReference(Matcher token, String formula) {
    if (token.group("name") != null) {
      char next = token.end() < formula.length() ? formula.charAt(token.end()) : ' ';
      return next != '(' && !token.group().matches("(?i)true|false");
    }
    return token.group("cell") != null
        || token.group("columns") != null
        || token.group("rows") != null
        || token.group("bracket") != null;
  }
}
