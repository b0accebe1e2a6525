package fineweight.refresh.inventory;

import fineweight.workbook.CellPlace;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A single cell as a defined name writes it: {@code 'My coins'!$N$1}. */
public final class SheetReference {
  private static final Pattern FORM =
      Pattern.compile("(?:'((?:[^']|'')+)'|([^'!]+))!\\$?([A-Z]{1,3})\\$?([1-9][0-9]{0,6})");

  private SheetReference() {}

  public static String of(CellPlace place) {
    return quoted(place.sheet())
        + "!$"
        + CellPlace.letters(place.column())
        + "$"
        + (place.row() + 1);
  }

  public static String quoted(String sheet) {
    return "'" + sheet.replace("'", "''") + "'";
  }

  /** Empty if the reference is broken ({@code #REF!}) or more than a cell. */
  public static Optional<CellPlace> parse(String reference) {
    Matcher form = FORM.matcher(reference.strip());
    if (!form.matches()) {
      return Optional.empty();
    }
    String sheet = form.group(1) != null ? form.group(1).replace("''", "'") : form.group(2);
    int column = 0;
    for (char letter : form.group(3).toCharArray()) {
      column = column * 26 + letter - 'A' + 1;
    }
    return Optional.of(new CellPlace(sheet, Integer.parseInt(form.group(4)) - 1, column - 1));
  }
}
