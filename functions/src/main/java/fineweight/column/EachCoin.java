package fineweight.column;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words that name several coins by their dates, told apart: "3 merc dimes 40 42 45-D" becomes "1940
 * merc dimes", "1942 merc dimes" and "1945-D merc dimes". Only the text is looked at; whether each
 * part means what the whole meant is for the caller to check.
 */
public final class EachCoin {
  private static final Pattern DATE =
      Pattern.compile(
          "(?<![\\p{L}\\p{N}.,$])['’]?(\\d{4}|\\d{2})(-?[A-Z]{1,2})?(?![\\p{L}\\p{N}%])");
  private static final String BETWEEN = "(?i)[\\s,;&/+]*(and|und|et|en|y|e)?[\\s,;&/+]*";
  private static final String ENDS = "^[\\s,;:&/+-]+|[\\s,;:&/+-]+$";
  private static final int CENTURY = 100;

  private EachCoin() {}

  /**
   * @param text one cell
   * @param years the dates that were understood, in full or two digits
   * @return the words of each coin in the order of the text; empty if the dates do not stand side
   *     by side in it
   */
  public static List<String> words(String text, List<Integer> years) {
    List<Matcher> dates = new ArrayList<>();
    Matcher each = DATE.matcher(text);
    for (int from = 0; each.find(from); from = each.end()) {
      Matcher found = DATE.matcher(text);
      found.find(each.start());
      dates.add(found);
    }
    for (int first = 0; first + years.size() <= dates.size(); first++) {
      List<Matcher> run = dates.subList(first, first + years.size());
      if (sideBySide(text, run) && areThose(run, years)) {
        return apart(text, run, years);
      }
    }
    return List.of();
  }

  private static boolean sideBySide(String text, List<Matcher> run) {
    for (int i = 1; i < run.size(); i++) {
      if (!text.substring(run.get(i - 1).end(), run.get(i).start()).matches(BETWEEN)) {
        return false;
      }
    }
    return true;
  }

  private static boolean areThose(List<Matcher> run, List<Integer> years) {
    for (int i = 0; i < run.size(); i++) {
      String digits = run.get(i).group(1);
      int wanted = digits.length() == 2 ? years.get(i) % CENTURY : years.get(i);
      if (Integer.parseInt(digits) != wanted) {
        return false;
      }
    }
    return true;
  }

  private static List<String> apart(String text, List<Matcher> run, List<Integer> years) {
    String count = "(?i)^\\s*\\(?" + run.size() + "\\)?\\s*(x|×|pcs\\.?|pieces|coins)?\\s+";
    String before = text.substring(0, run.get(0).start()).replaceFirst(count, "");
    String after = text.substring(run.get(run.size() - 1).end());
    String rest = (before.replaceAll(ENDS, "") + " " + after.replaceAll(ENDS, "")).strip();
    List<String> words = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      String mint = run.get(i).group(2) == null ? "" : run.get(i).group(2);
      words.add((years.get(i) + mint + " " + rest).strip());
    }
    return words;
  }
}
