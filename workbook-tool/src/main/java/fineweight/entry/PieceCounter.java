package fineweight.entry;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Goes on counting in the manner of a list's own numbers: after A-09 comes A-10. */
final class PieceCounter {
  private static final Pattern COUNTED = Pattern.compile("(.*?)(\\d{1,15})");

  private final Set<String> used;
  private String last;

  /**
   * @param numbers those of the list so far, in its order; they are never given again
   */
  PieceCounter(List<String> numbers) {
    used = new HashSet<>(numbers);
    last = numbers.isEmpty() ? "0" : largest(numbers);
  }

  /** The largest of those that are written like the last one. */
  private static String largest(List<String> numbers) {
    String last = numbers.get(numbers.size() - 1);
    Matcher model = COUNTED.matcher(last);
    if (!model.matches()) {
      return last;
    }
    String largest = last;
    long most = Long.parseLong(model.group(2));
    for (String number : numbers) {
      Matcher counted = COUNTED.matcher(number);
      boolean alike = counted.matches() && counted.group(1).equals(model.group(1));
      if (alike && Long.parseLong(counted.group(2)) > most) {
        most = Long.parseLong(counted.group(2));
        largest = number;
      }
    }
    return largest;
  }

  /** The next number; empty if the list's numbers do not end in digits. */
  Optional<String> next() {
    Matcher counted = COUNTED.matcher(last);
    if (!counted.matches()) {
      return Optional.empty();
    }
    String digits = counted.group(2);
    long value = Long.parseLong(digits);
    do {
      value++;
      last = counted.group(1) + padded(value, digits.length());
    } while (!used.add(last));
    return Optional.of(last);
  }

  private static String padded(long value, int length) {
    String text = Long.toString(value);
    return "0".repeat(Math.max(0, length - text.length())) + text;
  }
}
