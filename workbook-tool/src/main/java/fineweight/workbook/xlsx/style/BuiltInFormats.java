package fineweight.workbook.xlsx.style;

import java.util.Map;

/**
 * Number formats that every office knows by a number (ECMA-376 part 1, 18.8.30, from memory); only
 * those that mean the same in every language.
 */
final class BuiltInFormats {
  private static final Map<String, Integer> NUMBERS =
      Map.of("0", 1, "0.00", 2, "#,##0", 3, "#,##0.00", 4, "0%", 9, "0.00%", 10, "@", 49);

  private BuiltInFormats() {}

  /** Null if it is none. */
  static Integer number(String code) {
    return NUMBERS.get(code);
  }
}
