package fineweight.toolpack;

import java.util.regex.Pattern;

/** What the text of a formula tells about its functions. */
final class FormulaWords {
  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"|'[^']*'");
  private static final Pattern OURS =
      Pattern.compile("(?<![\\w.])FINEWEIGHT\\.\\w+\\s*\\(", Pattern.CASE_INSENSITIVE);

  /**
   * Functions that look at cells which show only when they are calculated, that depend on the
   * moment, or for which the evaluator is known to come to other results than offices.
   */
  private static final Pattern UNSURE =
      Pattern.compile(
          "(?<![\\w.])(INDIRECT|OFFSET|TODAY|NOW|RAND|RANDBETWEEN|CELL|INFO|SUMPRODUCT|LOOKUP"
              + "|AGGREGATE|XLOOKUP|XMATCH)\\s*\\(",
          Pattern.CASE_INSENSITIVE);

  private FormulaWords() {}

  static boolean callOurs(String formula) {
    return OURS.matcher(bare(formula)).find();
  }

  static boolean areSure(String formula) {
    return !UNSURE.matcher(bare(formula)).find();
  }

  private static String bare(String formula) {
    return QUOTED.matcher(formula).replaceAll("");
  }
}
