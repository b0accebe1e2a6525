package fineweight.sheet;

import fineweight.sheet.function.Parameter;
import fineweight.sheet.function.SheetFunction;

/** The page that describes every function, made from the list. */
public final class SheetFunctionReference {
  private static final String OPENING =
      """
      # Functions in cells

      This page is made from the list of functions. The same names work in LibreOffice with the
      add-in installed, and in cells that the tool recalculates without an office.

      To install the add-in: `unopkg add fineweight-calc.oxt`, then start the office anew. It needs
      LibreOffice 7.4 or newer with Java 17 or newer.

      - Arguments are parted by semicolons here; your program may want commas.
      - Shares are written as spreadsheets hold them: `2%` or `0.02`.
      - Amounts of money are numbers without a currency: all in one formula are in the same one.
      - A blank cell given as an argument counts as 0, as in arithmetic; a coin of 0 is no coin.
      - What cannot be used comes back as a text that says why; what is not known as a number comes
        back as `#N/A`, so that no sum takes it for zero.
      - Where words leave a coin open, the lowest figure comes back; `FINEWEIGHT.QUESTION` says what
        settles it.
      - Give areas that end, such as A2:A500: a whole column is copied cell by cell.
      - `fineweight refresh` brings the results of cells that call them up to date, without an office.
        What it cannot calculate (a formula with the day of today, a column of a table, another file)
        keeps its result and is named.
      - `fineweight refresh --add-in-formulas` lets the melt column call `FINEWEIGHT.MELT`. The figures
        are stored too, so that they show where the add-in is missing.
      - [How long they take](functions-speed.md) in an office.
      - Melt is no offer and no appraisal: a buyer pays less.
      """;

  private SheetFunctionReference() {}

  /** The whole page. */
  public static String markdown() {
    StringBuilder page = new StringBuilder(OPENING);
    for (SheetFunction function : SheetFunctions.all()) {
      page.append("\n## ").append(function.name()).append("\n\n");
      page.append(function.texts().purpose()).append("\n\n");
      page.append("`").append(function.signature()).append("`\n\n");
      page.append("| argument | may be left out | meaning |\n|---|---|---|\n");
      for (Parameter parameter : function.parameters()) {
        page.append("| ").append(parameter.name());
        page.append(parameter.optional() ? " | yes | " : " | no | ");
        page.append(parameter.words()).append(" |\n");
      }
      page.append("\n- Result: ").append(function.texts().result()).append(".\n");
      page.append("- No answer: ").append(function.texts().misses()).append(".\n");
      page.append("- Example: `=").append(function.texts().example()).append("`\n");
    }
    return page.toString();
  }
}
