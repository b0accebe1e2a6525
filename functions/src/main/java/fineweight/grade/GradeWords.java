package fineweight.grade;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words of the scale and the numbers they stand for (common practice of the trade). */
final class GradeWords {
  /** Words as written out, the longer first where one holds another. */
  private static final Map<String, String> LETTERS = new LinkedHashMap<>();

  private static final Map<String, Grade> STEPS = new LinkedHashMap<>();

  static {
    LETTERS.put("BRILLIANT UNCIRCULATED", "BU");
    LETTERS.put("(?:ABOUT|ALMOST) UNC(?:IRCULATED)?\\.?", "AU");
    LETTERS.put("UNCIRCULATED", "UNC");
    LETTERS.put("MINT STATE", "MS");
    LETTERS.put("(?:EXTREMELY|EXTRA) FINE", "XF");
    LETTERS.put("VERY FINE", "VF");
    LETTERS.put("VERY GOOD", "VG");
    LETTERS.put("(?:ABOUT|ALMOST) GOOD", "AG");
    LETTERS.put("PROOF", "PR");
    LETTERS.put("FINE", "F");
    LETTERS.put("GOOD", "G");
    LETTERS.put("FAIR", "FR");
    LETTERS.put("POOR", "P");
    STEPS.put("P", Grade.of(1));
    STEPS.put("PO", Grade.of(1));
    STEPS.put("FR", Grade.of(2));
    STEPS.put("FA", Grade.of(2));
    STEPS.put("AG", Grade.of(3));
    STEPS.put("G", Grade.between(4, 6));
    STEPS.put("VG", Grade.between(8, 10));
    STEPS.put("F", Grade.between(12, 15));
    STEPS.put("VF", Grade.between(20, 35));
    STEPS.put("XF", Grade.between(40, 45));
    STEPS.put("EF", Grade.between(40, 45));
    STEPS.put("AU", Grade.between(50, 58));
    STEPS.put("MS", Grade.between(60, 70));
    STEPS.put("UNC", Grade.between(60, 70));
    STEPS.put("BU", Grade.between(60, 70));
    // A proof may be worn, so its number may be any.
    STEPS.put("PR", new Grade(1, 70, true));
    STEPS.put("PF", new Grade(1, 70, true));
  }

  /** Signs of eye appeal, colour and mirror that follow a number and do not change it. */
  private static final String SUFFIX = "(?:\\+|\\*|RD|RB|BN|DC|DCAM|CAM|UC|UCAM|PL|DMPL|FB|FS|FH)*";

  private static final Pattern ONE =
      Pattern.compile("([A-Z]{0,3})[ -]?(\\d{1,2})? ?" + SUFFIX + "\\.?");

  private GradeWords() {}

  static Optional<Grade> read(String text) {
    String upper = text.strip().toUpperCase(Locale.ROOT).replaceAll("\\s+", " ");
    for (Map.Entry<String, String> word : LETTERS.entrySet()) {
      upper = upper.replaceAll("\\b" + word.getKey() + "(?!\\w)", word.getValue());
    }
    upper = upper.replaceAll("^(?:GEM|CHOICE|CH) ", "");
    Optional<Grade> single = readOne(upper);
    return single.isPresent() ? single : readPair(upper);
  }

  private static Optional<Grade> readOne(String text) {
    Matcher match = ONE.matcher(text);
    if (!match.matches()) {
      return Optional.empty();
    }
    String letters = match.group(1);
    String digits = match.group(2);
    if (letters.isEmpty()) {
      return digits == null ? Optional.empty() : number(Integer.parseInt(digits), false);
    }
    Grade step = STEPS.get(letters);
    if (step == null || digits == null) {
      return Optional.ofNullable(step);
    }
    int number = Integer.parseInt(digits);
    return number < step.low() || number > step.high()
        ? Optional.empty()
        : number(number, step.proof());
  }

  private static Optional<Grade> number(int number, boolean proof) {
    return number < 1 || number > 70
        ? Optional.empty()
        : Optional.of(new Grade(number, number, proof));
  }

  /** Two grades with a stroke between them: the range from the lower to the higher. */
  private static Optional<Grade> readPair(String text) {
    String[] two = text.split(" ?(?:/|-| TO ) ?", -1);
    if (two.length != 2 || (isBare(two[1]) && !two[0].matches(".*\\d"))) {
      // A word and a number that does not belong to it is a slip, not a range.
      return Optional.empty();
    }
    Optional<Grade> first = readOne(two[0]);
    Optional<Grade> second = readOne(two[1]);
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.empty();
    }
    Grade one = first.get();
    Grade other = second.get();
    return Optional.of(
        new Grade(
            Math.min(one.low(), other.low()),
            Math.max(one.high(), other.high()),
            one.proof() || other.proof()));
  }

  private static boolean isBare(String text) {
    return text.matches("\\d+");
  }
}
