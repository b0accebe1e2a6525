package fineweight.standard;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What separates a standard from others of the same country, denomination and date. Immutable.
 *
 * @param variant in words, for a person with the coin in hand; may be empty, or hold several parts
 *     with their years: {@code 1853: arrows at the date; 1873: no arrows at the date}
 * @param onlyIf the standard is thought of only when a description holds one of these; empty for
 *     always. Collectors' issues beside a circulating coin have it
 * @param tells a description that holds one of these means this standard and none without it
 */
public record Distinction(String variant, List<Tell> onlyIf, List<Tell> tells) {
  private static final Pattern WITH_YEARS = Pattern.compile("(\\d{4}(?:-(?:\\d{4})?)?):\\s*(.*)");

  public Distinction {
    onlyIf = List.copyOf(onlyIf);
    tells = List.copyOf(tells);
  }

  /** The words of the variant that hold for a coin of that year; empty if there are none. */
  public String variantIn(int year) {
    for (String part : variant.split(";", -1)) {
      Matcher limited = WITH_YEARS.matcher(part.strip());
      if (!limited.matches()) {
        return part.strip();
      }
      if (Years.parse(limited.group(1)).contains(year)) {
        return limited.group(2).strip();
      }
    }
    return "";
  }
}
